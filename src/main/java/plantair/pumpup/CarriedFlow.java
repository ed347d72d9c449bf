package plantair.pumpup;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.RatingComparison.Reach;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;

/**
 * The flow of an ordinary test carried to another pressure by the shape of a fill with many readings (S23):
 * q = q_test · q_hand(p*)/q_hand(p_test). What warms the receiver raises both alike and falls out.
 *
 * <p>Source: own method and simulation, docs/supply.md. Checked by: CarriedFlowTests.
 *
 * @param at the pressure
 * @param flow free air at the intake, at the speed of the test
 * @param ratio q_hand(p*)/q_hand(p_test)
 * @param relativeShape relative standard uncertainty of the ratio
 * @param relativeU relative standard uncertainty of the flow: of the test and of the ratio together
 * @param rating beside what the maker states at that pressure (M13), at rated speed when both speeds are known; null when he
 *     states nothing there that can be compared
 * @param verdict whether it meets that (M15); null without a rating
 */
public record CarriedFlow(
        GaugePressure at,
        FlowRate flow,
        double ratio,
        double relativeShape,
        double relativeU,
        @Nullable RatingComparison rating,
        @Nullable NameplateVerdict verdict) {

    /** What warming does to the shape; own simulation, docs/supply.md. */
    static final double SHAPE_U = 0.01;

    /** So close to the maker's only point its flow is taken to hold, Pa. */
    private static final double SAME_PA = 1_000;

    static CarriedFlow of(TimedFill fill, PumpUpResult test, FlowAtPressure here, FlowAtPressure there) {
        FlowRate known = Objects.requireNonNull(test.freeAir());
        double shape = shapeU(here, there, fill.gauge());
        return new CarriedFlow(
                here.at(),
                here.scaled(there, known),
                here.byHand().over(there.byHand()),
                shape,
                StrictMath.hypot(test.uncertainty().combined(), shape),
                null,
                null);
    }

    /** Zero where nothing is carried. */
    private static double shapeU(FlowAtPressure here, FlowAtPressure there, @Nullable GaugeAccuracy gauge) {
        double distance = Math.abs(here.at().pascals() - there.at().pascals());
        if (!(distance > 0)) {
            return 0;
        }
        double window = Math.min(here.window().pascals(), there.window().pascals());
        double apart = Math.min(1, distance / window);
        double betweenMarks =
                gauge == null ? Budget.UNKNOWN_GAUGE_PA / window : gauge.limitPa() / 3 * StrictMath.sqrt(2) / window;
        // a reading between the two pressures pulls one slope up and the other down: straight, not by squares
        double fits = here.relativeFit() + there.relativeFit();
        double curves = StrictMath.sqrt(2) * FlowAtPressure.MODEL_U;
        double marks = betweenMarks * StrictMath.sqrt(2 * apart);
        return StrictMath.sqrt(fits * fits + curves * curves + marks * marks + SHAPE_U * SHAPE_U);
    }

    /** The same beside what the maker states. */
    CarriedFlow beside(List<RatingPoint> points, TimedFill fill, PumpUpResult test) {
        FlowRate compared = Objects.requireNonNull(test.comparableFlow()).times(ratio);
        return RatingComparison.of(
                        points,
                        at,
                        basis -> onBasis(basis, compared, fill.readings().intake()))
                .filter(CarriedFlow::holdsHere)
                .map(found -> new CarriedFlow(
                        at, flow, ratio, relativeShape, relativeU, found, NameplateVerdict.of(found, relativeU)))
                .orElse(this);
    }

    private static boolean holdsHere(RatingComparison found) {
        return found.reach() == Reach.INTERPOLATED || Math.abs(found.distance().pascals()) <= SAME_PA;
    }

    private static FlowRate onBasis(FlowBasis basis, FlowRate flow, Intake intake) {
        return basis == FlowBasis.INTAKE ? flow : FreeAir.standard(flow, intake, basis);
    }
}
