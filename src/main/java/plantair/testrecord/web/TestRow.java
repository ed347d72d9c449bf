package plantair.testrecord.web;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.StoredResult;
import plantair.web.Status;

/**
 * One test in a list.
 *
 * @param flow free air delivered with its uncertainty; empty when the runs were not averaged
 * @param status worst severity of its findings
 * @param superseded true when another test takes its place
 * @param reviewedBy who reviewed it; empty when nobody did
 */
record TestRow(
        long id,
        String date,
        long compressorId,
        String tag,
        String site,
        String tester,
        String flow,
        Status status,
        boolean superseded,
        String reviewedBy) {

    static TestRow of(PumpUpTest test, @Nullable StoredResult result, @Nullable String reviewedBy, ResultWords words) {
        var format = words.format();
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
                result == null ? words.status(Optional.empty()) : words.status(result.severity()),
                result != null && !result.isCurrent(),
                reviewedBy == null ? "" : reviewedBy);
    }
}
