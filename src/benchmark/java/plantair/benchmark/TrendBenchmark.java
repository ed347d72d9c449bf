package plantair.benchmark;

import java.lang.System.Logger.Level;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
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
import plantair.statistics.LineFit;
import plantair.statistics.WeightedLine;
import plantair.trend.OutputPoint;
import plantair.trend.OutputTrend;

/** The trend of one machine with forty tests, and a plain line with equal weights. Not final: JMH extends it. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 10, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(2)
public class TrendBenchmark {

    private List<OutputPoint> points = FortyTests.points();
    private List<LocalDate> events = FortyTests.EVENTS;
    private double[] years = FortyTests.years();
    private double[] logs = FortyTests.logs();
    private double[] equal = FortyTests.equal();

    /** Runs both and says how many times longer the trend takes. */
    public static void main(String[] arguments) throws RunnerException {
        var options =
                new OptionsBuilder().include(TrendBenchmark.class.getName()).build();
        Collection<RunResult> results = new Runner(options).run();
        Statistics trend = statistics(results, "trend");
        Statistics plain = statistics(results, "plainLine");
        System.getLogger("benchmark").log(Level.INFO, line("mean", trend.getMean(), plain.getMean()));
        System.getLogger("benchmark").log(Level.INFO, line("least", trend.getMin(), plain.getMin()));
    }

    /** All that is said of a machine in one line: word, change a year, what is ruled out, and what the repair did. */
    @Benchmark
    public List<Object> trend() {
        OutputTrend trend = OutputTrend.of(points, events);
        return List.of(trend.code(), trend.yearlyChange(), trend.ruledOutDecline(), trend.steps());
    }

    /** Line through the logarithms, all tests alike. */
    @Benchmark
    public LineFit plainLine() {
        return WeightedLine.fit(years, logs, equal);
    }

    private static Statistics statistics(Collection<RunResult> results, String name) {
        return results.stream()
                .map(RunResult::getPrimaryResult)
                .filter(result -> result.getLabel().equals(name))
                .findFirst()
                .orElseThrow()
                .getStatistics();
    }

    private static String line(String what, double trend, double plain) {
        return "%s: trend %.0f ns, plain line %.1f ns, ratio %.0f".formatted(what, trend, plain, trend / plain);
    }
}
