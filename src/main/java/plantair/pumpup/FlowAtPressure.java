package plantair.pumpup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureDifference;
import plantair.quantity.Temperature;
import plantair.statistics.EffectiveDegrees;

/**
 * Delivered flow at one pressure, from a rise of pressure with many readings (S1 to S3): laps at gauge marks, or a logger.
 *
 * <p>With a1 = dt/dp at p* from {@link CurveWindow the readings near it}: q = V/(Pa a1) by hand, and
 * q = V · Ta/(Pa − φ e_s(Ta)) · C'(p*)/a1 as the full balance (M7) has it, with C' the growth of the content at the
 * temperature of the receiver air. Valid where that temperature stands still while the pressure passes the window; in a fill
 * from cold it rises, and the level reads 4 to 16 % high while the shape stays good to about 1 %: see {@link #scaled}.
 *
 * <p>u(q)/q = u(a1)/a1 from the scatter with n − terms degrees of freedom, and 0.25 % for the curve not being a polynomial.
 *
 * <p>Source: own method and simulation, docs/supply.md. Checked by: FlowAtPressureReferenceTests, FlowAtPressureTests.
 *
 * @param at the pressure
 * @param byHand free air at the intake, air temperature ignored (M1)
 * @param freeAir free air at the intake; null where the receiver air was not measured
 * @param relativeFit u(a1)/a1
 * @param degreesOfFreedom of it
 * @param scatterSeconds standard deviation of the times about the curve, s
 * @param degree of the curve, 2 or 3
 * @param points readings used
 * @param from lowest pressure used
 * @param to highest pressure used
 */
public record FlowAtPressure(
        GaugePressure at,
        FlowRate byHand,
        @Nullable FlowRate freeAir,
        double relativeFit,
        int degreesOfFreedom,
        double scatterSeconds,
        int degree,
        int points,
        GaugePressure from,
        GaugePressure to) {

    /** What the curve not being a polynomial adds; own simulation, docs/supply.md. */
    public static final double MODEL_U = 0.0025;

    /**
     * The flow, or why there is none.
     *
     * @param flow empty when a finding stops it
     * @param findings those of the rise and those of the fit
     */
    public record Outcome(Optional<FlowAtPressure> flow, List<CurveFinding> findings) {}

    /**
     * Two flows with the wanted probability between them.
     *
     * @param low lower end
     * @param high upper end
     */
    public record Interval(FlowRate low, FlowRate high) {}

    /** The flow at a pressure. */
    public static Outcome of(PressureRise rise, ShutVolume shut, GaugePressure at) {
        CurveWindow window = CurveWindow.of(rise.points(), at, CurveWindow.HALF_PA);
        return of(rise, shut, at, window, window.degree());
    }

    /**
     * Flows at pressures of equal distance over the whole rise, for a chart; without those where none can be told.
     *
     * @param count how many pressures, two or more, the ends being two of them
     * @throws IllegalArgumentException when fewer than two
     */
    public static List<FlowAtPressure> along(PressureRise rise, ShutVolume shut, int count) {
        if (count < 2) {
            throw new IllegalArgumentException("count must be at least 2: " + count);
        }
        var pressures =
                rise.points().stream().mapToDouble(TimedPressure::pascals).summaryStatistics();
        if (pressures.getCount() == 0) {
            return List.of();
        }
        double step = (pressures.getMax() - pressures.getMin()) / (count - 1);
        return IntStream.range(0, count)
                .mapToDouble(i -> Math.min(pressures.getMin() + i * step, pressures.getMax()))
                .mapToObj(pascals -> of(rise, shut, new GaugePressure(pascals)))
                .flatMap(outcome -> outcome.flow().stream())
                .toList();
    }

    static Outcome of(PressureRise rise, ShutVolume shut, GaugePressure at, CurveWindow window, int degree) {
        List<CurveFinding> findings = new ArrayList<>(rise.findings());
        if (isStopped(findings)) {
            return new Outcome(Optional.empty(), rise.findings());
        }
        if (window.points().size() < CurveWindow.FEWEST || window.pressures() < degree + 2) {
            findings.add(new CurveFinding(
                    CurveCode.FEW_POINTS, Math.min(window.points().size(), window.pressures())));
        } else if (window.outside(at) > 0) {
            findings.add(new CurveFinding(CurveCode.NOT_COVERED, window.outside(at)));
        } else {
            TimeCurve curve = TimeCurve.fit(window.points(), at, degree);
            findings.addAll(CurveChecks.of(curve, window, at, degree));
            if (!isStopped(findings)) {
                return new Outcome(Optional.of(flow(curve, window, shut, at, degree)), List.copyOf(findings));
            }
        }
        return new Outcome(Optional.empty(), List.copyOf(findings));
    }

    private static boolean isStopped(List<CurveFinding> findings) {
        return findings.stream().anyMatch(finding -> finding.code().isStop());
    }

    private static FlowAtPressure flow(
            TimeCurve curve, CurveWindow window, ShutVolume shut, GaugePressure at, int degree) {
        double perSecond = shut.volume().cubicMetres() / curve.slope();
        Intake intake = shut.intake();
        Temperature air = shut.receiverAir();
        FlowRate freeAir = air == null
                ? null
                : new FlowRate(perSecond
                        * intake.temperature().kelvin()
                        / intake.dryPa()
                        * ShutVolume.growth(at.above(intake.station()), air, intake, shut.compressibility()));
        return new FlowAtPressure(
                at,
                new FlowRate(perSecond / intake.station().pascals()),
                freeAir,
                curve.uSlope() / curve.slope(),
                curve.degreesOfFreedom(),
                curve.scatter(),
                degree,
                window.points().size(),
                new GaugePressure(window.lowPa()),
                new GaugePressure(window.highPa()));
    }

    /** The free air where the receiver air was measured, else the hand figure. */
    public FlowRate best() {
        return freeAir == null ? byHand : freeAir;
    }

    /** How wide the range of the readings used is. */
    PressureDifference window() {
        return to.minus(from);
    }

    /** Relative standard uncertainty of fit and model together. */
    public double relativeU() {
        return StrictMath.sqrt(relativeFit * relativeFit + MODEL_U * MODEL_U);
    }

    /**
     * What the gauge adds (S3): a third of the variance of its limit e is an error in proportion, a third differs from mark to
     * mark: u = (e/3) √(1/F² + 2/W²) over a window W of a span F, as for two readings W apart. More readings do not help,
     * since errors of neighbouring marks are alike.
     */
    public double relativeGauge(GaugeAccuracy gauge) {
        double window = window().pascals();
        double span = gauge.span().pascals();
        return gauge.limitPa() / 3 * StrictMath.sqrt(1 / (span * span) + 2 / (window * window));
    }

    /**
     * An interval round the {@link #best} figure.
     *
     * @param relativeOthers relative standard uncertainty from volume, gauge, temperature and station together, zero or more
     * @param confidence between 0 and 1
     * @throws IllegalArgumentException when outside the ranges of the parameters
     */
    public Interval interval(double relativeOthers, double confidence) {
        double[] parts = {relativeFit, MODEL_U, relativeOthers};
        double[] degrees = {degreesOfFreedom, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double factor = EffectiveDegrees.of(parts, degrees).coverageFactor(confidence);
        double half = factor * StrictMath.sqrt(relativeU() * relativeU() + relativeOthers * relativeOthers);
        return new Interval(best().times(1 - half), best().times(1 + half));
    }

    /**
     * The flow here from one that is known at another pressure of the same rise: known · q(here)/q(there). What warms the
     * receiver raises both alike.
     *
     * @param there this rise at that pressure
     * @param known flow there, from settled readings for instance
     */
    public FlowRate scaled(FlowAtPressure there, FlowRate known) {
        return known.times(byHand.over(there.byHand));
    }
}
