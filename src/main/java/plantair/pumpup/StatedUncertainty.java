package plantair.pumpup;

import java.util.ArrayList;
import java.util.List;
import plantair.pumpup.Uncertainty.Component;
import plantair.pumpup.Uncertainty.Source;

/**
 * The uncertainty of a mean flow while no instruments are named: defaults by the width of the band, and what the runs
 * themselves show (M20, docs/method.md).
 *
 * <p>Defaults are our own from simulation, not from a source: test to test 3 %, 5 % or 8 % for a band of at least 4 bar, 2
 * bar, or less; volume from a plate ± 2 % rectangular; an unknown gauge 3 %; air temperature 2 K at each end, of
 * which 0.3 K differs from run to run.
 */
final class StatedUncertainty {

    private static final double WIDE_PA = 4e5;
    private static final double NARROW_PA = 2e5;
    private static final double VOLUME = 0.02 / StrictMath.sqrt(3);
    private static final double UNKNOWN_GAUGE = 0.03;
    private static final double AIR_U_K = 2;
    private static final double AIR_REPEAT_U_K = 0.3;
    private static final double CLOCK_U_S = 0.3;
    private static final double READING_U_PA = 3_000;

    private StatedUncertainty() {}

    /** Of the mean of the runs. */
    static Uncertainty ofMean(PumpUpReadings readings, List<RunResult> runs, double relativeScatter) {
        List<Component> components = new ArrayList<>();
        WarmingFactor warming = runs.get(0).warming();
        double repeat = relativeScatter / StrictMath.sqrt(runs.size());
        double perTest = warming == null ? repeat : StrictMath.hypot(repeat, warming.relativeRandom());
        components.add(new Component(Source.TEST_TO_TEST, Math.max(byBand(readings), perTest), false));
        components.add(new Component(Source.VOLUME, VOLUME, true));
        components.add(new Component(Source.GAUGE, UNKNOWN_GAUGE, true));
        components.add(
                warming == null
                        ? new Component(Source.AIR_TEMPERATURE, AIR_U_K * perKelvin(runs.get(0)), true)
                        : new Component(Source.WARMING_FACTOR, warming.relativeShared(), true));
        return new Uncertainty(components);
    }

    /** Of one run against its neighbours: clock, needle, and thermometer where the air was read. */
    static double ofRun(RunReadings run, RunResult result) {
        double clock = CLOCK_U_S / run.elapsed().seconds();
        double reading = StrictMath.sqrt(2)
                * READING_U_PA
                / run.stop().minus(run.start()).pascals();
        double air = result.warming() == null ? AIR_REPEAT_U_K * perKelvin(result) : 0;
        return StrictMath.sqrt(clock * clock + reading * reading + air * air);
    }

    private static double byBand(PumpUpReadings readings) {
        double narrowest = readings.runs().stream()
                .mapToDouble(run -> run.stop().minus(run.start()).pascals())
                .min()
                .orElseThrow();
        return narrowest >= WIDE_PA ? 0.03 : narrowest >= NARROW_PA ? 0.05 : 0.08;
    }

    /** d ln q/dT = P/(T² B) at both ends together, with B = P2/T2 − P1/T1; 1/K. */
    private static double perKelvin(RunResult run) {
        double atStop = run.stop().content() / run.stop().temperature().kelvin();
        double atStart = run.start().content() / run.start().temperature().kelvin();
        return StrictMath.hypot(atStop, atStart)
                / Math.abs(run.stop().content() - run.start().content());
    }
}
