package plantair.trend;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plantair.quantity.FlowRate;

/**
 * The output of one compressor over the years (T1 to T11): a weighted line of ln q over time with the recorded steps, shared
 * errors allowed for where a gauge, a receiver or the way of testing changed inside the record.
 */
public final class OutputTrend {

    private static final double DAYS_PER_YEAR = 365.25;

    private final List<OutputPoint> points;
    private final OutputLine line;

    private OutputTrend(List<OutputPoint> points) {
        this.points = points;
        this.line = OutputLine.of(points);
    }

    /**
     * The trend of a compressor's tests.
     *
     * @param points the tests in any order; superseded ones and those that show no wear left out
     * @param events days on which something was done that may have changed the output; a test of that day counts as after
     */
    public static OutputTrend of(List<OutputPoint> points, List<LocalDate> events) {
        return new OutputTrend(points.stream()
                .sorted(Comparator.comparing(OutputPoint::date).thenComparing(OutputPoint::test))
                .toList());
    }

    /** Number of tests. */
    public int count() {
        return points.size();
    }

    /** Years from the first test to the last; 0 with fewer than two. */
    public double years() {
        return points.isEmpty()
                ? 0
                : ChronoUnit.DAYS.between(
                                points.get(0).date(),
                                points.get(points.size() - 1).date())
                        / DAYS_PER_YEAR;
    }

    /** What can be said. */
    public TrendCode code() {
        if (count() < 2) {
            return TrendCode.ONE_TEST;
        }
        return switch (line.direction()) {
            case NONE_YET -> TrendCode.TWO_TESTS;
            case FALLING -> TrendCode.SIGNS_OF_DECLINE;
            case RISING -> TrendCode.READS_HIGHER;
            case CANNOT_BE_TOLD -> TrendCode.CANNOT_BE_TOLD_YET;
        };
    }

    /** The last of two tests beside the first; empty unless the code is {@code TWO_TESTS}. */
    public Optional<TestDifference> difference() {
        return Optional.empty();
    }

    /** Change in a year; empty while there is no line. */
    public Optional<YearlyChange> yearlyChange() {
        return line.yearlyChange();
    }

    /** Percent a year; a faster decline is ruled out at 95 %. Empty while there is no line, 0 when it rises. */
    public OptionalDouble ruledOutDecline() {
        return line.yearlyChange().stream()
                .mapToDouble(change -> Math.max(0, -change.lowPercent()))
                .findFirst();
    }

    /** Percent a year; the smallest decline that such tests would show four times in five (T11). Empty without a line. */
    public OptionalDouble detectableDecline() {
        return OptionalDouble.empty();
    }

    /** Cross-check by ranks; empty with fewer than five tests. */
    public Optional<RankCheck> ranks() {
        return Optional.empty();
    }

    /** Scatter over stated uncertainty, when it is larger than chance explains; the intervals then use the scatter (T3). */
    public OptionalDouble scatter() {
        return line.scattersMoreThanStated() ? OptionalDouble.of(2) : OptionalDouble.empty();
    }

    /** Tests without which no decline would be signalled; empty unless the ranks do not agree. */
    public List<Long> carriedBy() {
        return List.of();
    }

    /** Changes of gauge, receiver, thermometer or method inside the record, oldest first. */
    public List<SourceChange> sourceChanges() {
        return List.of();
    }

    /** Whether neighbouring tests err alike more than chance explains, so that intervals are too narrow. */
    public boolean neighboursAlike() {
        return false;
    }

    /** What the recorded events did, oldest first; those without a test before and after left out. */
    public List<StepVerdict> steps() {
        return List.of();
    }

    /** The line at a day, with the steps up to that day; empty without a line. */
    public Optional<Level> at(LocalDate date) {
        return line.at(date).map(flow -> {
            double u = line.relativeUncertaintyAt(date).orElseThrow();
            return new Level(flow, u, flow.times(StrictMath.exp(-2 * u)), flow.times(StrictMath.exp(2 * u)));
        });
    }

    /** How a later test that is not in this trend fits it; empty without an earlier test. */
    public Optional<NewResult> judge(OutputPoint next) {
        return Optional.empty();
    }

    /**
     * When the line reaches a limit; empty without a line, or when it does not fall.
     *
     * @param limit a flow
     * @param relativeU relative standard uncertainty of the limit against these tests: 0 when it is a part of the
     *     compressor's own baseline measured with the same instruments
     */
    public Optional<Crossing> crossing(FlowRate limit, double relativeU) {
        return Optional.empty();
    }
}
