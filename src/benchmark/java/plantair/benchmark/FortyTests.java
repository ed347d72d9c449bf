package plantair.benchmark;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import plantair.quantity.FlowRate;
import plantair.trend.OutputPoint;
import plantair.trend.SharedError;
import plantair.trend.SharedError.Cause;

/** Ten years of quarterly tests: 2 % a year, a repair that brings 5 %, another gauge after seven years. Same each time. */
final class FortyTests {

    static final List<LocalDate> EVENTS = List.of(LocalDate.of(2020, 4, 14));

    private static final int COUNT = 40;
    private static final LocalDate FIRST = LocalDate.of(2016, 5, 10);
    private static final LocalDate GAUGE = LocalDate.of(2023, 9, 20);
    private static final double DAYS_PER_YEAR = 365.25;
    private static final double RANDOM_U = 0.015;

    private FortyTests() {}

    static List<OutputPoint> points() {
        var random = new Random(40);
        return IntStream.range(0, COUNT).mapToObj(i -> point(i, random)).toList();
    }

    private static OutputPoint point(int i, Random random) {
        LocalDate day = FIRST.plusDays(91L * i + random.nextInt(20));
        double years = years(day);
        double step = day.isBefore(EVENTS.get(0)) ? 0 : 0.05;
        double ln = StrictMath.log(0.03) - 0.02 * years + step + RANDOM_U * random.nextGaussian();
        return new OutputPoint(i, day, new FlowRate(StrictMath.exp(ln)), RANDOM_U, shared(day));
    }

    private static List<SharedError> shared(LocalDate day) {
        return List.of(
                new SharedError(Cause.GAUGE, day.isBefore(GAUGE) ? "G-1" : "G-2", 1, 0.02),
                new SharedError(Cause.VOLUME, "R-1", 1, 0.012),
                new SharedError(Cause.THERMOMETER, "T-1", 1, 0.008));
    }

    private static double years(LocalDate day) {
        return ChronoUnit.DAYS.between(FIRST, day) / DAYS_PER_YEAR;
    }

    static double[] years() {
        return points().stream().mapToDouble(point -> years(point.date())).toArray();
    }

    static double[] logs() {
        return points().stream()
                .mapToDouble(point -> StrictMath.log(point.flow().cubicMetresPerSecond()))
                .toArray();
    }

    static double[] equal() {
        return IntStream.range(0, COUNT).mapToDouble(i -> 1).toArray();
    }
}
