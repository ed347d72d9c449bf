package plantair.trend;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.quantity.FlowRate;
import plantair.statistics.LineFit;
import plantair.statistics.PooledScatter;
import plantair.statistics.WeightedLine;

/**
 * The plain weighted line of ln q over time (T1 to T4), q the delivered flow. Errors that all tests share, such as a wrong
 * receiver volume, multiply every q alike and so leave the slope alone.
 *
 * <p>Validity: three or more tests on two or more days, all on one basis and with one way of testing; a changed gauge or a
 * repair inside the record is not allowed for yet.
 *
 * <p>Checked by: OutputLineReferenceTests, OutputLineTests.
 */
public final class OutputLine {

    private static final double DAYS_PER_YEAR = 365.25;
    private static final int FEWEST_TESTS = 3;
    private static final double STATED_DEGREES_OF_FREEDOM = 4;
    private static final double CONFIDENCE = 0.95;

    private final int count;
    private final @Nullable Fitted fitted;

    private record Fitted(LocalDate first, LineFit line, PooledScatter scatter, YearlyChange change) {}

    private OutputLine(int count, @Nullable Fitted fitted) {
        this.count = count;
        this.fitted = fitted;
    }

    /**
     * The line of a compressor's tests.
     *
     * @param points the tests in any order, superseded and refused ones left out
     */
    public static OutputLine of(List<OutputPoint> points) {
        boolean enough = points.size() >= FEWEST_TESTS
                && points.stream().map(OutputPoint::date).distinct().count() > 1;
        Fitted fitted = enough ? fit(points) : null;
        return new OutputLine(points.size(), fitted != null && fitted.change.isFinite() ? fitted : null);
    }

    private static Fitted fit(List<OutputPoint> points) {
        List<OutputPoint> inOrder =
                points.stream().sorted(Comparator.comparing(OutputPoint::date)).toList();
        LocalDate first = inOrder.get(0).date();
        LineFit line = WeightedLine.fit(
                inOrder.stream()
                        .mapToDouble(point -> years(first, point.date()))
                        .toArray(),
                inOrder.stream()
                        .mapToDouble(point -> StrictMath.log(point.flow().cubicMetresPerSecond()))
                        .toArray(),
                inOrder.stream().mapToDouble(OutputPoint::relativeU).toArray());
        PooledScatter scatter = line.pooled(STATED_DEGREES_OF_FREEDOM);
        return new Fitted(
                first,
                line,
                scatter,
                YearlyChange.of(line.slope(), scatter.s() * line.uSlope(), scatter.coverageFactor(CONFIDENCE)));
    }

    private static double years(LocalDate from, LocalDate to) {
        return ChronoUnit.DAYS.between(from, to) / DAYS_PER_YEAR;
    }

    /** Number of tests. */
    public int count() {
        return count;
    }

    /** Which way the flow goes. */
    public Direction direction() {
        if (fitted == null) {
            return Direction.NONE_YET;
        }
        if (fitted.change.highPercent() < 0) {
            return Direction.FALLING;
        }
        return fitted.change.lowPercent() > 0 ? Direction.RISING : Direction.CANNOT_BE_TOLD;
    }

    /** Change in a year; empty while there is no line. */
    public Optional<YearlyChange> yearlyChange() {
        return Optional.ofNullable(fitted).map(Fitted::change);
    }

    /**
     * Flow on the line at a day; empty while there is no line.
     *
     * @throws IllegalArgumentException when the day is so far from the tests that the flow is no number
     */
    public Optional<FlowRate> at(LocalDate date) {
        return Optional.ofNullable(fitted)
                .map(fit -> new FlowRate(StrictMath.exp(fit.line.valueAt(years(fit.first, date)))));
    }

    /** Relative standard uncertainty of the line at a day, errors shared by all tests left out; empty without a line. */
    public Optional<Double> relativeUncertaintyAt(LocalDate date) {
        return Optional.ofNullable(fitted).map(fit -> fit.scatter.s() * fit.line.uncertaintyAt(years(fit.first, date)));
    }

    /** Whether the tests scatter more than their stated uncertainty, so that the intervals use the scatter (T3). */
    public boolean scattersMoreThanStated() {
        return fitted != null && fitted.scatter.guardFired();
    }
}
