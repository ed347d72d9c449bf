package plantair.pumpup;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import plantair.quantity.FlowRate;
import plantair.quantity.VesselVolume;
import plantair.statistics.Repeats;

/**
 * The warming factor of one machine and band, learned from its own tests with a settled reading (M9): each tells by how much
 * its reading at the stop would have overstated the flow. Takes the place of the lumped model.
 *
 * @param factor mean of the tests, above zero
 * @param relativeU relative standard uncertainty of that mean, shared by all tests that use it
 * @param tests how many tests it was learned from
 */
public record LearnedFactor(double factor, double relativeU, int tests) {

    private static final int FEWEST_TESTS = 3;
    private static final double LEAST_U = 0.01;
    private static final double SAME_BAND = 0.15;

    /** @throws IllegalArgumentException when factor or uncertainty is not above zero */
    public LearnedFactor {
        if (!(factor > 0 && relativeU > 0)) {
            throw new IllegalArgumentException("factor and uncertainty must be positive: " + factor);
        }
    }

    /**
     * Learns from earlier tests with a settled reading, of the same net volume and about the same band.
     *
     * @param earlier earlier tests of the machine, of any treatment
     * @param now the test that lacks a temperature
     * @return empty while fewer than three earlier tests fit
     */
    public static Optional<LearnedFactor> of(List<PumpUpReadings> earlier, PumpUpReadings now) {
        double[] factors = earlier.stream()
                .filter(test -> test.airTemperature() == AirTemperature.SETTLED && isAlike(test, now))
                .mapToDouble(LearnedFactor::factorOf)
                .filter(factor -> factor > 0)
                .toArray();
        if (factors.length < FEWEST_TESTS) {
            return Optional.empty();
        }
        Repeats repeats = Repeats.of(factors);
        double u = repeats.standardDeviation() / repeats.mean() / StrictMath.sqrt(factors.length);
        return Optional.of(new LearnedFactor(repeats.mean(), Math.max(LEAST_U, u), factors.length));
    }

    private static boolean isAlike(PumpUpReadings test, PumpUpReadings now) {
        RunReadings its = test.runs().get(0);
        RunReadings ours = now.runs().get(0);
        double width = ours.stop().minus(ours.start()).pascals();
        VesselVolume volume = test.netVolume();
        return Math.abs(its.start().minus(ours.start()).pascals()) <= SAME_BAND * width
                && Math.abs(its.stop().minus(ours.stop()).pascals()) <= SAME_BAND * width
                && Math.abs(volume.cubicMetres() / now.netVolume().cubicMetres() - 1) < LEAST_U;
    }

    /** Mean over the runs of the flow by the reading at the stop, air as cool as the intake, over the settled flow. */
    private static double factorOf(PumpUpReadings test) {
        double[] ratios = test.runs().stream()
                .mapToDouble(run -> {
                    double settled = balance(test, run, true).cubicMetresPerSecond();
                    return settled > 0 ? balance(test, run, false).cubicMetresPerSecond() / settled : 0;
                })
                .toArray();
        boolean sound = DoubleStream.of(ratios).allMatch(ratio -> ratio > 0);
        return sound ? Repeats.of(ratios).mean() : 0;
    }

    private static FlowRate balance(PumpUpReadings test, RunReadings run, boolean settled) {
        Intake intake = test.intake();
        boolean atRest = settled && run.settled() != null && run.settledAir() != null;
        var start = ReceiverState.of(
                run.start().above(intake.station()), intake.temperature(), intake, Compressibility.DRY_AIR);
        var stop = ReceiverState.of(
                (atRest ? run.settled() : run.stop()).above(intake.station()),
                atRest ? run.settledAir() : intake.temperature(),
                intake,
                Compressibility.DRY_AIR);
        return FreeAir.byBalance(test.netVolume(), run.elapsed(), intake, start, stop);
    }
}
