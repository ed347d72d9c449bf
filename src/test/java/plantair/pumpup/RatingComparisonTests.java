package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plantair.quantity.FlowBasis.DISPLACEMENT;
import static plantair.quantity.FlowBasis.INTAKE;
import static plantair.quantity.FlowBasis.NORMAL_101_325KPA_0C_DRY;
import static plantair.quantity.FlowBasis.STANDARD_100KPA_20C_DRY;
import static plantair.quantity.FlowBasis.UNKNOWN;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plantair.pumpup.RatingComparison.Reach;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureUnit;

/** The flow beside the nameplate (M13); the numbers are arithmetic on straight lines. */
class RatingComparisonTests {

    private static final List<RatingPoint> THREE =
            List.of(point(6, 20, INTAKE), point(8, 19, INTAKE), point(10, 17, INTAKE));

    @ParameterizedTest
    @CsvSource({
        "6, 20, INTERPOLATED, 0",
        "7.5, 19.25, INTERPOLATED, -0.5",
        "8, 19, INTERPOLATED, 0",
        "9.5, 17.5, INTERPOLATED, -0.5",
        "10, 17, INTERPOLATED, 0",
        "5, 20.5, EXTRAPOLATED, -1",
        "12, 15, EXTRAPOLATED, 2"
    })
    void followsTheLineThroughTheNeighbours(double mid, double expected, Reach reach, double distance) {
        RatingComparison comparison = compare(THREE, mid, 18).orElseThrow();

        assertThat(comparison.expected().in(FlowUnit.LITRE_PER_SECOND)).isCloseTo(expected, within(1e-9));
        assertThat(comparison.ratio()).isCloseTo(18 / expected, within(1e-9));
        assertThat(comparison.reach()).isEqualTo(reach);
        assertThat(comparison.distance().in(PressureUnit.BAR)).isCloseTo(distance, within(1e-9));
    }

    @Test
    void doesNotMindTheOrderOfThePoints() {
        List<RatingPoint> shuffled = List.of(THREE.get(2), THREE.get(0), THREE.get(1));

        assertThat(compare(shuffled, 9, 18)).isEqualTo(compare(THREE, 9, 18)).isPresent();
    }

    @Test
    void takesASinglePointAsItIs() {
        RatingComparison comparison =
                compare(List.of(point(7, 20, INTAKE)), 8.5, 19).orElseThrow();

        assertThat(comparison.expected().in(FlowUnit.LITRE_PER_SECOND)).isCloseTo(20, within(1e-9));
        assertThat(comparison.ratio()).isCloseTo(0.95, within(1e-12));
        assertThat(comparison.reach()).isEqualTo(Reach.ONE_POINT);
        assertThat(comparison.distance().in(PressureUnit.BAR)).isCloseTo(1.5, within(1e-9));
    }

    /** Two figures at one pressure make no line; their mean is taken, so a point typed twice counts once. */
    @Test
    void takesTheMeanOfPointsAtOnePressure() {
        List<RatingPoint> points = List.of(point(7, 20, INTAKE), point(7, 18, INTAKE));

        RatingComparison comparison = compare(points, 8.5, 19).orElseThrow();

        assertThat(comparison.expected().in(FlowUnit.LITRE_PER_SECOND)).isCloseTo(19, within(1e-9));
        assertThat(comparison.reach()).isEqualTo(Reach.ONE_POINT);
    }

    @Test
    void prefersRatingsAtIntakeConditions() {
        List<RatingPoint> points =
                List.of(point(7, 30, STANDARD_100KPA_20C_DRY), point(7, 20, INTAKE), point(7, 40, DISPLACEMENT));

        RatingComparison comparison = compare(points, 7, 19).orElseThrow();

        assertThat(comparison.basis()).isEqualTo(INTAKE);
        assertThat(comparison.ratio()).isCloseTo(0.95, within(1e-12));
    }

    @Test
    void comparesOnTheBasisOfTheRating() {
        List<RatingPoint> points = List.of(point(7, 20, NORMAL_101_325KPA_0C_DRY));

        RatingComparison comparison = RatingComparison.of(
                        points, bar(7), basis -> litresPerSecond(basis == NORMAL_101_325KPA_0C_DRY ? 17 : 19))
                .orElseThrow();

        assertThat(comparison.basis()).isEqualTo(NORMAL_101_325KPA_0C_DRY);
        assertThat(comparison.ratio()).isCloseTo(0.85, within(1e-12));
    }

    @Test
    void comparesNothingWithDisplacementOrAnUnknownBasis() {
        assertThat(compare(List.of(point(7, 20, DISPLACEMENT), point(8, 20, UNKNOWN)), 7, 19))
                .isEmpty();
        assertThat(compare(List.of(), 7, 19)).isEmpty();
    }

    private static Optional<RatingComparison> compare(List<RatingPoint> points, double mid, double measured) {
        return RatingComparison.of(points, bar(mid), basis -> litresPerSecond(measured));
    }

    private static RatingPoint point(double pressure, double flow, FlowBasis basis) {
        return new RatingPoint(bar(pressure), litresPerSecond(flow), basis);
    }

    private static GaugePressure bar(double value) {
        return GaugePressure.of(value, PressureUnit.BAR);
    }

    private static FlowRate litresPerSecond(double value) {
        return FlowRate.of(value, FlowUnit.LITRE_PER_SECOND);
    }
}
