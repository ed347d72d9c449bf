package plantair.history.web;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plantair.history.MachineFile;
import plantair.pumpup.PumpUpResult;
import plantair.quantity.FlowRate;
import plantair.testrecord.MachineHistory;
import plantair.testrecord.ResultLine;
import plantair.trend.Level;
import plantair.trend.OutputPoint;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;

/** From the current tests of a machine to the rows of its chart and table, newest first. */
@Component
final class PointRows {

    private final HistoryWords words;
    private final PageWords page;

    PointRows(HistoryWords words, PageWords page) {
        this.words = words;
        this.page = page;
    }

    List<PointRow> of(MachineFile file, UnitSet units) {
        QuantityFormat format = QuantityFormat.of(units);
        List<PointRow> rows = new ArrayList<>();
        for (ResultLine test : file.machine().history().tests()) {
            rows.add(row(file.machine().history(), test, file.results().get(test.testId()), format));
        }
        Collections.reverse(rows);
        return rows;
    }

    private PointRow row(
            MachineHistory history, ResultLine test, @Nullable PumpUpResult result, QuantityFormat format) {
        Optional<FlowRate> flow = test.comparable();
        Optional<OutputPoint> point = history.point(test);
        double combined = test.relativeCombined();
        String own = flow.map(q -> format.flowNumber(q, combined)).orElse(null);
        return new PointRow(
                test.testId(),
                test.date().toString(),
                own,
                flow.map(q -> format.flowUncertainty(q, test.relativeRandom())).orElse(null),
                flow.map(q -> format.flowUncertainty(q, combined)).orElse(null),
                point.map(on -> format.flowNumber(on.flow(), combined))
                        .filter(referred -> !referred.equals(own))
                        .orElse(null),
                history.ofBaseline(test)
                        .map(part -> format.percent(part.ratio(), part.standardUncertainty()))
                        .orElse(null),
                history.isBaseline(test),
                point.flatMap(on -> history.trend().at(test.date()))
                        .map(Level::flow)
                        .map(q -> format.flowNumber(q, combined))
                        .orElse(null),
                history.isOtherPressure(test)
                        ? page.say("history.otherPressure")
                        : result == null ? null : words.keptFromTrend(result),
                test.isRestated(),
                test.comparableAsRecorded()
                        .map(q -> format.flowNumber(q, combined))
                        .orElse(null),
                result == null ? words.noFinding() : words.worstFinding(result));
    }
}
