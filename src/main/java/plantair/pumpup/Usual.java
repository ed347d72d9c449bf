package plantair.pumpup;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;

/**
 * What a machine usually shows, for comparison with a new reading.
 *
 * @param stop usual stop pressure; null when there is no earlier test and no rating
 * @param flow usual delivered or rated flow; null when there is neither
 * @param band marks of the last test; null when there is none
 */
public record Usual(
        @Nullable GaugePressure stop,
        @Nullable FlowRate flow,
        @Nullable Band band) {

    /**
     * The marks between which the last test was run; the flow over another band is another figure.
     *
     * @param start lower mark
     * @param stop upper mark
     */
    public record Band(GaugePressure start, GaugePressure stop) {}

    /** Without an earlier test. */
    public Usual(@Nullable GaugePressure stop, @Nullable FlowRate flow) {
        this(stop, flow, null);
    }

    /**
     * Medians of earlier tests; the rating where there is no test.
     *
     * @param earlier earlier results of the machine, newest first, may be empty
     * @param ratings its rating points, may be empty
     */
    public static Usual of(List<PumpUpResult> earlier, List<RatingPoint> ratings) {
        Double stop = median(earlier.stream()
                        .mapToDouble(result ->
                                result.midPressure().pascals() + result.band().pascals() / 2)
                        .toArray())
                .orElseGet(() -> median(ratings.stream()
                                .mapToDouble(point -> point.pressure().pascals())
                                .toArray())
                        .orElse(null));
        Double flow = median(earlier.stream()
                        .flatMap(result -> Optional.ofNullable(result.freeAir()).stream())
                        .mapToDouble(FlowRate::cubicMetresPerSecond)
                        .toArray())
                .orElseGet(() -> median(ratings.stream()
                                .filter(point -> point.basis() != FlowBasis.DISPLACEMENT)
                                .mapToDouble(point -> point.flow().cubicMetresPerSecond())
                                .toArray())
                        .orElse(null));
        return new Usual(
                stop == null ? null : new GaugePressure(stop),
                flow == null ? null : new FlowRate(flow),
                earlier.isEmpty() ? null : band(earlier.get(0)));
    }

    private static Band band(PumpUpResult result) {
        double mid = result.midPressure().pascals();
        double half = result.band().pascals() / 2;
        return new Band(new GaugePressure(mid - half), new GaugePressure(mid + half));
    }

    private static Optional<Double> median(double[] values) {
        Arrays.sort(values);
        return values.length == 0
                ? Optional.empty()
                : Optional.of((values[(values.length - 1) / 2] + values[values.length / 2]) / 2);
    }
}
