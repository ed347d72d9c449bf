package plantair.testrecord;

import java.util.List;
import java.util.Optional;
import plantair.trend.Baseline;
import plantair.trend.BaselineComparison;
import plantair.trend.OutputPoint;

/** The baseline of a machine: its first test, by date, that gave a flow and is not superseded. */
public final class Baselines {

    private Baselines() {}

    /**
     * The baseline test.
     *
     * @param current the current results of one machine, oldest first
     */
    public static Optional<StoredResult> of(List<StoredResult> current) {
        return current.stream().filter(result -> point(result).isPresent()).findFirst();
    }

    /** A test as a point of the machine's history; empty when it gave no flow. */
    public static Optional<OutputPoint> point(StoredResult result) {
        return result.comparable()
                .filter(flow -> flow.cubicMetresPerSecond() > 0)
                .map(flow -> new OutputPoint(result.performedOn(), flow, result.relativeRandom()));
    }

    /** A test as a part of the baseline; empty when it gave no flow, is the baseline, or there is none. */
    public static Optional<BaselineComparison> compare(StoredResult result, List<StoredResult> current) {
        return of(current)
                .filter(baseline -> baseline.testId() != result.testId())
                .flatMap(baseline -> point(result)
                        .map(test -> Baseline.compare(test, point(baseline).orElseThrow())));
    }
}
