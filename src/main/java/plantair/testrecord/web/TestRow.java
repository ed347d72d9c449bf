package plantair.testrecord.web;

import org.jspecify.annotations.Nullable;
import plantair.pumpup.Severity;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.StoredResult;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;

/**
 * One test in a list.
 *
 * @param flow free air delivered with its uncertainty; empty when the runs were not averaged
 * @param severity worst severity of its findings; null when there are none
 * @param superseded true when another test takes its place
 */
record TestRow(
        long id,
        String date,
        long compressorId,
        String tag,
        String site,
        String tester,
        String flow,
        @Nullable Severity severity,
        boolean superseded) {

    static TestRow of(PumpUpTest test, @Nullable StoredResult result, UnitSet units) {
        var format = QuantityFormat.of(units);
        String flow = result == null
                ? ""
                : result.freeAir()
                        .map(q -> format.flow(q, result.relativeCombined()))
                        .orElse("");
        return new TestRow(
                test.id(),
                test.performedAt().atZone(test.zone()).toLocalDate().toString(),
                test.compressor().id(),
                test.compressor().tag(),
                test.compressor().site().name(),
                test.tester(),
                flow,
                result == null ? null : result.severity().orElse(null),
                result != null && !result.isCurrent());
    }
}
