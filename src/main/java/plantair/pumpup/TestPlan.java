package plantair.pumpup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import plantair.pumpup.Recommendation.Reason;
import plantair.quantity.Elapsed;
import plantair.quantity.GaugePressure;

/**
 * What a test would be worth, for a range of start pressures: how long it would take and how sure it would be. Equations
 * in docs/method.md, "Planning a test".
 *
 * <p>Checked by: TestPlanTests.
 *
 * @param rows by rising start pressure; empty when no band lasts between half a second and four hours
 */
public record TestPlan(List<PlanRow> rows) {

    /** From test to test no better than this is asked for; our own choice, about half of what a year of wear takes. */
    public static final double GOAL = 0.02;

    /** A shorter run is more a test of the hand than of the machine; common practice, no source. */
    public static final Elapsed SHORTEST = new Elapsed(30);

    private static final int MOST_ROWS = 16;
    private static final double NARROWEST_PA = 3e4;
    private static final double LEAST_S = 0.5;
    private static final double MOST_S = 4 * 3600;
    private static final int MOST_ITERATIONS = 25;
    private static final double CLOSE = 1e-9;

    /** Classes of EN 837-1, largest error in parts of span; and the grades of ASME B40.100 lie near them. From memory. */
    private static final double[] CLASSES = {0.04, 0.025, 0.016, 0.01, 0.006, 0.0025, 0.001};

    /** A gauge that is better by less than this is not worth its price; our own choice. */
    private static final double WORTHWHILE = 0.7;

    /** Copies the list. */
    public TestPlan {
        rows = List.copyOf(rows);
    }

    /** The plan: start pressures from zero in steps, as far as a band of 0.3 bar is left (M9 holds no further). */
    public static TestPlan of(PlanSetup setup) {
        double stop = setup.stop().pascals();
        double step = setup.step().pascals();
        while (stop > MOST_ROWS * step) {
            step *= 2;
        }
        List<PlanRow> rows = new ArrayList<>();
        for (int i = 0; stop - i * step >= NARROWEST_PA; i++) {
            row(setup, new GaugePressure(i * step)).ifPresent(rows::add);
        }
        return new TestPlan(rows);
    }

    private static Optional<PlanRow> row(PlanSetup setup, GaugePressure start) {
        Intake intake = setup.intake();
        ReceiverState first = state(start, intake);
        ReceiverState last = state(setup.stop(), intake);
        double cool = FreeAir.byBalance(setup.volume(), new Elapsed(1), intake, first, last)
                        .cubicMetresPerSecond()
                / setup.expected().cubicMetresPerSecond();
        if (!(cool >= LEAST_S && cool <= MOST_S)) {
            return Optional.empty();
        }
        WarmingFactor warming = warming(setup, start, cool);
        double seconds = cool / warming.factor();
        double rise = setup.stop().minus(start).pascals();
        GaugeAccuracy gauge = setup.gauge();
        double perKelvin = StrictMath.hypot(first.content(), last.content())
                / intake.temperature().kelvin()
                / (last.content() - first.content());
        return Optional.of(new PlanRow(
                start,
                new Elapsed(seconds),
                warming,
                StrictMath.sqrt(2) * gauge.readingU() / rise,
                setup.instruments().clockU() / seconds,
                gaugeError(gauge, rise),
                setup.volumeU(),
                perKelvin,
                setup.instruments().thermometerU()));
    }

    private static ReceiverState state(GaugePressure pressure, Intake intake) {
        return ReceiverState.of(
                pressure.above(intake.station()), intake.temperature(), intake, Compressibility.DRY_AIR);
    }

    /** The factor of the run that takes as long as the flow and the factor itself make it. */
    private static WarmingFactor warming(PlanSetup setup, GaugePressure start, double cool) {
        WarmingFactor warming = factor(setup, start, cool);
        double before = 1;
        for (int i = 0; i < MOST_ITERATIONS && Math.abs(warming.factor() - before) > CLOSE; i++) {
            before = warming.factor();
            warming = factor(setup, start, cool / before);
        }
        return warming;
    }

    private static WarmingFactor factor(PlanSetup setup, GaugePressure start, double seconds) {
        return ReceiverWarming.factor(
                setup.volume(), RunReadings.of(start, setup.stop(), new Elapsed(seconds)), setup.intake());
    }

    /** (e/3)² [(Δp/F)² + 2] of a rise Δp: a third each of the variance is offset, span and local (M20). */
    private static double gaugeError(GaugeAccuracy gauge, double rise) {
        double part = rise / gauge.span().pascals();
        return gauge.limitPa() / 3 * StrictMath.sqrt(part * part + 2) / rise;
    }

    /**
     * The band to use: the one nearest to the stop pressure, and so to working pressure (M12), whose uncertainty from test
     * to test is within {@link #GOAL} and that lasts {@link #SHORTEST} at least.
     *
     * @return empty when there is no band at all
     */
    public Optional<Recommendation> recommended(AirTemperature air) {
        Predicate<PlanRow> longEnough = row -> row.elapsed().seconds() >= SHORTEST.seconds();
        Optional<Recommendation> good = rows.stream()
                .filter(longEnough.and(row -> row.perTest(air) <= GOAL))
                .reduce((low, high) -> high)
                .map(row -> new Recommendation(row, Reason.GOOD_ENOUGH));
        Optional<Recommendation> best = rows.stream()
                .filter(longEnough)
                .min(Comparator.comparingDouble(row -> row.perTest(air)))
                .map(row -> new Recommendation(row, Reason.BEST_THERE_IS));
        return good.or(() -> best)
                .or(() -> rows.stream().findFirst().map(row -> new Recommendation(row, Reason.ALL_TOO_SHORT)));
    }

    /**
     * The next gauge worth having: of the best class below seven tenths of this one's limit, else equal.
     *
     * @return empty when there is no better class
     */
    public static Optional<GaugeAccuracy> betterGauge(GaugeAccuracy gauge) {
        for (double limit : CLASSES) {
            if (limit <= WORTHWHILE * gauge.limitPart()) {
                return Optional.of(new GaugeAccuracy(gauge.span(), limit, gauge.division(), List.of()));
            }
        }
        return Optional.empty();
    }
}
