package plantair.testrecord;

import java.util.List;
import java.util.Optional;
import plantair.trend.Baseline;
import plantair.trend.BaselineComparison;
import plantair.trend.OutputLine;
import plantair.trend.OutputPoint;

/**
 * The current tests of one machine beside its baseline.
 *
 * @param tests oldest first, superseded ones left out
 */
public record MachineHistory(List<ResultLine> tests) {

    public MachineHistory {
        tests = List.copyOf(tests);
    }

    /** The newest test. */
    public Optional<ResultLine> last() {
        return tests.isEmpty() ? Optional.empty() : Optional.of(tests.get(tests.size() - 1));
    }

    /** The first test that joins the trend. */
    public Optional<ResultLine> baseline() {
        return tests.stream()
                .filter(test -> test.joinsTrend() && test.comparable().isPresent())
                .findFirst();
    }

    public boolean isBaseline(ResultLine test) {
        return baseline().filter(test::equals).isPresent();
    }

    /** A test against the baseline; empty for the baseline itself and for a test that does not join the trend. */
    public Optional<BaselineComparison> ofBaseline(ResultLine test) {
        return !test.joinsTrend() || isBaseline(test)
                ? Optional.empty()
                : point(test)
                        .flatMap(point -> baseline()
                                .flatMap(MachineHistory::point)
                                .map(baseline -> Baseline.compare(point, baseline)));
    }

    /** The plain weighted line through the tests that join the trend. */
    public OutputLine line() {
        return OutputLine.of(tests.stream()
                .filter(ResultLine::joinsTrend)
                .flatMap(test -> point(test).stream())
                .toList());
    }

    private static Optional<OutputPoint> point(ResultLine test) {
        return test.comparable().map(flow -> new OutputPoint(test.date(), flow, test.relativeRandom()));
    }
}
