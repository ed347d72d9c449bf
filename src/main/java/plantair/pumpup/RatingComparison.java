package plantair.pumpup;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureDifference;

/**
 * The delivered flow beside what the maker states at the same pressure and on the same basis (M13).
 *
 * @param basis the basis of both flows
 * @param expected rated flow at the mid pressure of the test
 * @param measured delivered flow on that basis, at rated speed when both speeds are known
 * @param ratio measured over expected
 * @param reach how the expected flow was found
 * @param distance mid pressure of the test less the nearest rating point
 */
public record RatingComparison(
        FlowBasis basis, FlowRate expected, FlowRate measured, double ratio, Reach reach, PressureDifference distance) {

    /** How the expected flow was found. */
    public enum Reach {
        /** Between two rating points. */
        INTERPOLATED,
        /** Beyond the rating points, along the nearest two. */
        EXTRAPOLATED,
        /** One point only, taken as it is. */
        ONE_POINT
    }

    /**
     * Compares on intake conditions where the maker rates so, else on the first standard basis of the ratings.
     *
     * @param points the maker's points
     * @param mid pressure the measured flow belongs to (M12)
     * @param measuredOn the measured flow on a basis
     * @return empty when no point has a basis on which flows can be compared, or the points are so far from the test that
     *     extrapolating leaves no flow
     */
    static Optional<RatingComparison> of(
            List<RatingPoint> points, GaugePressure mid, Function<FlowBasis, FlowRate> measuredOn) {
        return points.stream()
                .map(RatingPoint::basis)
                .filter(RatingComparison::isComparable)
                .min(Comparator.naturalOrder())
                .map(basis -> compare(onBasis(points, basis), mid, measuredOn.apply(basis)))
                .filter(comparison -> comparison.expected().cubicMetresPerSecond() > 0);
    }

    /** True for a basis on which a delivered flow can be stated. */
    static boolean isComparable(FlowBasis basis) {
        return basis == FlowBasis.INTAKE || basis.state().isPresent();
    }

    /** The points on a basis by rising pressure; of several at one pressure their mean. */
    static List<RatingPoint> onBasis(List<RatingPoint> points, FlowBasis basis) {
        return points.stream()
                .filter(point -> point.basis() == basis)
                .collect(Collectors.groupingBy(point -> point.pressure().pascals(), TreeMap::new, Collectors.toList()))
                .values()
                .stream()
                .map(RatingComparison::mean)
                .toList();
    }

    private static RatingPoint mean(List<RatingPoint> atOnePressure) {
        double sum = atOnePressure.stream()
                .mapToDouble(point -> point.flow().cubicMetresPerSecond())
                .reduce(0, Double::sum);
        RatingPoint first = atOnePressure.get(0);
        return new RatingPoint(first.pressure(), new FlowRate(sum / atOnePressure.size()), first.basis());
    }

    private static RatingComparison compare(List<RatingPoint> points, GaugePressure mid, FlowRate measured) {
        RatingPoint nearest = points.stream()
                .min(Comparator.comparingDouble(
                        point -> Math.abs(point.pressure().pascals() - mid.pascals())))
                .orElseThrow();
        int above = 1;
        while (above < points.size() - 1 && points.get(above).pressure().pascals() < mid.pascals()) {
            above++;
        }
        boolean one = points.size() == 1;
        FlowRate expected = one ? nearest.flow() : along(points.get(above - 1), points.get(above), mid);
        boolean inside = mid.pascals() >= points.get(0).pressure().pascals()
                && mid.pascals() <= points.get(points.size() - 1).pressure().pascals();
        Reach reach = one ? Reach.ONE_POINT : inside ? Reach.INTERPOLATED : Reach.EXTRAPOLATED;
        double ratio = measured.cubicMetresPerSecond() / expected.cubicMetresPerSecond();
        return new RatingComparison(nearest.basis(), expected, measured, ratio, reach, mid.minus(nearest.pressure()));
    }

    private static FlowRate along(RatingPoint low, RatingPoint high, GaugePressure at) {
        double part = (at.pascals() - low.pressure().pascals())
                / (high.pressure().pascals() - low.pressure().pascals());
        double lowFlow = low.flow().cubicMetresPerSecond();
        return new FlowRate(lowFlow + part * (high.flow().cubicMetresPerSecond() - lowFlow));
    }
}
