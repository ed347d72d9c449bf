package plantair.trend;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import plantair.quantity.FlowRate;
import plantair.statistics.Column;
import plantair.statistics.LeastSquares;
import plantair.statistics.PooledScatter;
import plantair.statistics.Score;
import plantair.trend.NewResult.Code;

/**
 * What earlier tests foretell of another one (T10).
 *
 * @param y ln q foretold
 * @param u its standard uncertainty
 * @param beyond relative variance from errors that only the new test or only the earlier ones have
 * @param scatter of the earlier tests
 */
record Expectation(double y, double u, double beyond, PooledScatter scatter) {

    private static final double IN_LINE = 0.05;
    private static final double WORTH_REPEATING = 0.01;

    /**
     * From the line when it goes up or down at 95 %, else from the weighted mean of the tests since the last event, which
     * knows the level better. Empty when there is no such test.
     */
    static Optional<Expectation> of(
            OutputPoint next, List<OutputPoint> points, List<LocalDate> events, @Nullable TrendLine line) {
        LocalDate from = events.stream()
                .filter(event -> !event.isAfter(next.date()))
                .reduce(LocalDate.MIN, (earlier, later) -> later);
        List<OutputPoint> since =
                points.stream().filter(point -> !point.date().isBefore(from)).toList();
        if (since.isEmpty()) {
            return Optional.empty();
        }
        if (line != null && line.direction(TrendLine.CONFIDENCE) != 0) {
            return Optional.of(line.expectation(next));
        }
        PooledScatter scatter = line == null ? TrendLine.STATED : line.scatter();
        return Optional.of(mean(next, since, scatter));
    }

    private static Expectation mean(OutputPoint next, List<OutputPoint> points, PooledScatter scatter) {
        SharedErrors errors = new SharedErrors(points);
        double[] ones = new double[points.size()];
        Arrays.fill(ones, 1);
        List<Column> columns = new ArrayList<>(List.of(Column.free(ones)));
        columns.addAll(errors.asKnown());
        LeastSquares fit = LeastSquares.fit(
                columns,
                points.stream()
                        .mapToDouble(point -> StrictMath.log(point.flow().cubicMetresPerSecond()))
                        .toArray(),
                points.stream()
                        .mapToDouble(point -> scatter.s() * point.relativeU())
                        .toArray());
        double[] parts = DoubleStream.concat(DoubleStream.of(1), Arrays.stream(errors.partsOf(next)))
                .toArray();
        return new Expectation(fit.valueAt(parts), fit.uncertaintyAt(parts), errors.varianceBeyond(next), scatter);
    }

    NewResult judge(OutputPoint next) {
        double own = scatter.s() * next.relativeU();
        double all = Math.sqrt(u * u + beyond + own * own);
        double deviation = StrictMath.log(next.flow().cubicMetresPerSecond()) - y;
        double probability =
                Score.of(deviation, all, scatter.degreesOfFreedom()).probability();
        double half = scatter.coverageFactor(TrendLine.CONFIDENCE) * all;
        return new NewResult(code(probability), flow(y), flow(y - half), flow(y + half), probability);
    }

    private static Code code(double probability) {
        if (probability > IN_LINE) {
            return Code.IN_LINE;
        }
        return probability < WORTH_REPEATING ? Code.OUT_OF_LINE : Code.WORTH_REPEATING;
    }

    private static FlowRate flow(double y) {
        return new FlowRate(StrictMath.exp(y));
    }
}
