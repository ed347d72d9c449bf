package plantair.benchmark;

import java.lang.System.Logger.Level;
import java.util.Collection;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.util.Statistics;
import plantair.pumpup.FreeAir;
import plantair.pumpup.PumpUpMethods;
import plantair.pumpup.PumpUpReadings;
import plantair.pumpup.PumpUpResult;
import plantair.pumpup.RunReadings;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.PressureDifference;
import plantair.quantity.VesselVolume;

/** One test of three runs by the whole method, and by the hand method. Not final: JMH extends it. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 10, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(2)
public class EvaluationBenchmark {

    private PumpUpReadings readings = ThreeRuns.measured();

    /** Runs both and says how many times longer the whole method takes; then the same for the trend. */
    public static void main(String[] arguments) throws RunnerException {
        var options = new OptionsBuilder()
                .include(EvaluationBenchmark.class.getName())
                .build();
        Collection<RunResult> results = new Runner(options).run();
        Statistics method = statistics(results, "wholeMethod");
        Statistics hand = statistics(results, "handMethod");
        System.getLogger("benchmark").log(Level.INFO, line("mean", method.getMean(), hand.getMean()));
        System.getLogger("benchmark").log(Level.INFO, line("least", method.getMin(), hand.getMin()));
        TrendBenchmark.main(arguments);
    }

    /** Result, findings, uncertainty and working. */
    @Benchmark
    public PumpUpResult wholeMethod() {
        return PumpUpMethods.current().evaluate(readings);
    }

    /** Mean of the three runs by V (p2 − p1)/(Pa t), volume and station pressure worked out as well, m³/s. */
    @Benchmark
    public double handMethod() {
        VesselVolume volume = readings.netVolume();
        AbsolutePressure station = readings.station().pressure();
        double sum = 0;
        for (RunReadings run : readings.runs()) {
            double rise = run.stop().pascals() - run.start().pascals();
            sum += FreeAir.byHand(volume, new PressureDifference(rise), station, run.elapsed())
                    .cubicMetresPerSecond();
        }
        return sum / readings.runs().size();
    }

    private static Statistics statistics(Collection<RunResult> results, String name) {
        return results.stream()
                .map(RunResult::getPrimaryResult)
                .filter(result -> result.getLabel().equals(name))
                .findFirst()
                .orElseThrow()
                .getStatistics();
    }

    private static String line(String what, double method, double hand) {
        return "%s: whole method %.0f ns, hand method %.1f ns, ratio %.0f".formatted(what, method, hand, method / hand);
    }
}
