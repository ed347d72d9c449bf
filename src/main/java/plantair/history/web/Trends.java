package plantair.history.web;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import plantair.history.MachineFile;
import plantair.history.web.MachineView.PointRow;
import plantair.history.web.MachineView.TrendView;
import plantair.pumpup.PumpUpResult;
import plantair.quantity.FlowRate;
import plantair.quantity.Rounded;
import plantair.testrecord.MachineHistory;
import plantair.testrecord.ResultLine;
import plantair.trend.Level;
import plantair.trend.OutputTrend;
import plantair.trend.YearlyChange;
import plantair.web.QuantityFormat;
import plantair.web.UnitSet;

/** From a history to the words and rows of its page. */
@Component
final class Trends {

    private final HistoryWords words;

    Trends(HistoryWords words) {
        this.words = words;
    }

    TrendView trend(MachineHistory history) {
        OutputTrend line = history.trend();
        Optional<YearlyChange> change = line.yearlyChange();
        return new TrendView(
                line.count(),
                words.trend(line.code()),
                "history.explained." + line.code().name(),
                change.map(year -> sharp(year.percent(), year) + " ± " + sharp(year.standardUncertainty(), year))
                        .orElse(null),
                change.map(year -> sharp(year.lowPercent(), year)).orElse(null),
                change.map(year -> sharp(year.highPercent(), year)).orElse(null),
                line.scatter().isPresent(),
                history.baseline()
                        .map(test -> new MachineView.Baseline(
                                test.testId(), test.date().toString()))
                        .orElse(null));
    }

    private static String sharp(double percent, YearlyChange year) {
        return year.standardUncertainty() > 0
                ? Rounded.toUncertainty(percent, year.standardUncertainty())
                : Rounded.places(percent, 1);
    }

    List<PointRow> points(MachineFile file, UnitSet units) {
        MachineHistory history = file.machine().history();
        OutputTrend line = history.trend();
        var rows = new PointRows(words, history, line, units);
        List<PointRow> points = new ArrayList<>(history.tests().stream()
                .map(test -> rows.of(test, file.results().get(test.testId())))
                .toList());
        Collections.reverse(points);
        return points;
    }

    private record PointRows(HistoryWords words, MachineHistory history, OutputTrend line, UnitSet units) {

        PointRow of(ResultLine test, PumpUpResult result) {
            QuantityFormat format = QuantityFormat.of(units);
            Optional<FlowRate> flow = test.comparable();
            Optional<FlowRate> onLine = flow.filter(q -> test.joinsTrend())
                    .flatMap(q -> line.at(test.date()))
                    .map(Level::flow);
            double combined = result.uncertainty().combined();
            return new PointRow(
                    test.testId(),
                    test.date().toString(),
                    flow.map(q -> format.flowNumber(q, combined)).orElse(null),
                    flow.map(q -> format.flowUncertainty(q, test.relativeRandom()))
                            .orElse(null),
                    flow.map(q -> format.flowUncertainty(q, combined)).orElse(null),
                    history.ofBaseline(test)
                            .map(part -> format.percent(part.ratio(), part.standardUncertainty()))
                            .orElse(null),
                    history.isBaseline(test),
                    onLine.map(q -> format.flowNumber(q, combined)).orElse(null),
                    onLine.map(QuantityFormat.working(units)::flowNumber).orElse(null),
                    words.keptFromTrend(result),
                    test.isRestated(),
                    test.comparableAsRecorded()
                            .map(q -> format.flowNumber(q, combined))
                            .orElse(null),
                    words.worstFinding(result));
        }
    }
}
