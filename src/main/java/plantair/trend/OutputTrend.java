package plantair.trend;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import plantair.quantity.FlowRate;
import plantair.statistics.PooledScatter;

/**
 * The output of one compressor over the years (T1 to T11): a weighted line of ln q over time with the recorded steps, shared
 * errors allowed for where a gauge, a receiver or the way of testing changed inside the record.
 *
 * <p>Checked by: OutputTrendReferenceTests, OutputTrendTests, OutputTrendSimulationTests.
 */
public final class OutputTrend {

    /** Percent a year; slower decline than this is wear that nobody plans for. This program's own. */
    public static final double DECLINE_OF_INTEREST = 3;

    private static final double DAYS_PER_YEAR = 365.25;
    private static final double SURER = 0.99;
    private static final int FEWEST_TESTS_FOR_DECLINING = 4;
    private static final double SHORTEST_FOR_DECLINING = 1;

    private final List<OutputPoint> points;
    private final Steps steps;
    private final @Nullable TrendLine line;

    private OutputTrend(List<OutputPoint> points, List<LocalDate> events) {
        this.points = points;
        this.steps = new Steps(points, events);
        this.line = TrendLine.of(points, steps, new SharedErrors(points));
    }

    /**
     * The trend of a compressor's tests.
     *
     * @param points the tests in any order; superseded ones and those that show no wear left out
     * @param events days on which something was done that may have changed the output; a test of that day counts as after
     */
    public static OutputTrend of(List<OutputPoint> points, List<LocalDate> events) {
        List<OutputPoint> sorted = points.stream()
                .sorted(Comparator.comparing(OutputPoint::date).thenComparing(OutputPoint::test))
                .toList();
        return new OutputTrend(sorted, events);
    }

    /** Number of tests. */
    public int count() {
        return points.size();
    }

    private OutputPoint first() {
        return points.get(0);
    }

    private OutputPoint last() {
        return points.get(points.size() - 1);
    }

    /** Years from the first test to the last; 0 with fewer than two. */
    public double years() {
        return points.isEmpty() ? 0 : ChronoUnit.DAYS.between(first().date(), last().date()) / DAYS_PER_YEAR;
    }

    /** What can be said. With a recorded event between every two tests no rate can be told, and there is no line. */
    public TrendCode code() {
        if (count() < 2) {
            return TrendCode.ONE_TEST;
        }
        if (count() == 2 || years() == 0) {
            return TrendCode.TWO_TESTS;
        }
        if (line == null) {
            return TrendCode.CANNOT_BE_TOLD_YET;
        }
        return switch (line.direction(TrendLine.CONFIDENCE)) {
            case -1 -> isSure(line) ? TrendCode.DECLINING : TrendCode.SIGNS_OF_DECLINE;
            case 1 -> TrendCode.READS_HIGHER;
            default ->
                detectable(line) <= DECLINE_OF_INTEREST ? TrendCode.NO_DECLINE_SEEN : TrendCode.CANNOT_BE_TOLD_YET;
        };
    }

    private boolean isSure(TrendLine line) {
        LocalDate from = line.bend() == null ? first().date() : line.bend();
        long tests =
                points.stream().filter(point -> !point.date().isBefore(from)).count();
        double span = ChronoUnit.DAYS.between(from, last().date()) / DAYS_PER_YEAR;
        return tests >= FEWEST_TESTS_FOR_DECLINING && span >= SHORTEST_FOR_DECLINING && line.direction(SURER) < 0;
    }

    private static double detectable(TrendLine line) {
        return -YearlyChange.percent(-line.scatter().detectionFactor(TrendLine.CONFIDENCE) * line.uSlope());
    }

    /** The last test beside the first; empty unless the code is {@code TWO_TESTS}. */
    public Optional<TestDifference> difference() {
        if (code() != TrendCode.TWO_TESTS) {
            return Optional.empty();
        }
        BaselineComparison comparison = Baseline.compare(last(), first());
        double k = TrendLine.STATED.coverageFactor(TrendLine.CONFIDENCE);
        return Optional.of(
                new TestDifference(100 * (comparison.ratio() - 1), 100 * k * comparison.standardUncertainty()));
    }

    /** Change in a year; empty while there is no line. */
    public Optional<YearlyChange> yearlyChange() {
        return line().map(TrendLine::change);
    }

    private Optional<TrendLine> line() {
        return Optional.ofNullable(line);
    }

    /** Percent a year; a faster decline is ruled out at 95 %. Empty while there is no line, 0 when it rises. */
    public OptionalDouble ruledOutDecline() {
        return line().stream()
                .mapToDouble(it -> Math.max(0, -it.change().lowPercent()))
                .findFirst();
    }

    /** Percent a year; the smallest decline that such tests would show four times in five (T11). Empty without a line. */
    public OptionalDouble detectableDecline() {
        return line().stream().mapToDouble(OutputTrend::detectable).findFirst();
    }

    /** Cross-check by ranks; empty with fewer than five tests or without a line. */
    public Optional<RankCheck> ranks() {
        return line().flatMap(CrossCheck::ranks);
    }

    /** Scatter over stated uncertainty, when it is larger than chance explains; the intervals then use the scatter (T3). */
    public OptionalDouble scatter() {
        return line().stream()
                .map(TrendLine::scatter)
                .filter(PooledScatter::guardFired)
                .mapToDouble(PooledScatter::s)
                .findFirst();
    }

    /**
     * Tests of which each is needed for a decline to be signalled at all; empty unless a decline is signalled and the ranks do
     * not agree.
     */
    public List<Long> carriedBy() {
        boolean doubtful =
                code().isDecline() && ranks().filter(check -> !check.agrees()).isPresent();
        return doubtful ? CrossCheck.carriers(points, steps) : List.of();
    }

    /** Changes of gauge, receiver, thermometer or method inside the record, oldest first; empty without a line. */
    public List<SourceChange> sourceChanges() {
        return line().map(it -> it.errors().changes()).orElse(List.of());
    }

    /** The event since which the slope surely is another one than before; the trend is that of the tests since then (T6). */
    public Optional<LocalDate> bend() {
        return line().map(TrendLine::bend);
    }

    /** Whether neighbouring tests err alike more than chance explains, so that intervals are too narrow. */
    public boolean neighboursAlike() {
        return line().filter(CrossCheck::neighboursAlike).isPresent();
    }

    /**
     * What the recorded events did, oldest first; those without a test before and after left out. Events between the same two
     * tests have one change together, which each of them shows. Empty without a line.
     */
    public List<StepVerdict> steps() {
        List<StepVerdict> verdicts = new ArrayList<>();
        for (LocalDate event : steps.events()) {
            int step = steps.stepOf(event);
            if (line != null && step >= 0) {
                verdicts.add(StepVerdict.of(event, line.step(step), line.uStep(step), line.scatter()));
            }
        }
        return verdicts;
    }

    /** The line at a day, with the steps up to that day; empty without a line. */
    public Optional<Level> at(LocalDate date) {
        return line().map(it -> it.level(date));
    }

    /**
     * How a later test that is not in this trend fits it; empty without an earlier test since the last event that is not
     * later than the test.
     */
    public Optional<NewResult> judge(OutputPoint next) {
        return Expectation.of(next, points, steps.events(), line).map(expected -> expected.judge(next));
    }

    /**
     * When the line reaches a limit; empty without a line, when it does not fall, or when it may be on either side of the limit
     * and does not surely fall.
     *
     * @param limit a flow, above zero
     * @param relativeU relative standard uncertainty of the limit against these tests: 0 when it is a part of the
     *     compressor's own baseline measured with the same instruments
     */
    public Optional<Crossing> crossing(FlowRate limit, double relativeU) {
        return line().flatMap(it ->
                new Forecast(it, last().date()).of(StrictMath.log(limit.cubicMetresPerSecond()), relativeU));
    }
}
