package plantair.trend;

import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.trend.SharedError.Cause;

/**
 * Brings the flow of a test made between other marks to the pressure of the baseline (T13). Delivered flow falls as pressure
 * rises, by a slope that is taken as 2 % per bar give or take 1.15 % (anything from 0 to 4 alike); these figures are this
 * program's own, without a source. Beyond 1.5 bar the slope is worth nothing and tests are not compared.
 */
public final class ReferencePressure {

    private static final double PER_PASCAL = 0.02e-5;
    private static final double U_PER_PASCAL = 0.02e-5 / StrictMath.sqrt(3);
    private static final double FURTHEST_PA = 1.5e5;
    private static final double SAME_MARK_PA = 0.2e5;

    private ReferencePressure() {}

    /** Whether two marks on the gauge are near enough to be called one. */
    public static boolean isSameMark(GaugePressure one, GaugePressure other) {
        return Math.abs(one.minus(other).pascals()) <= SAME_MARK_PA;
    }

    /** Whether a test at one mean pressure can be brought to another. */
    public static boolean isNear(GaugePressure pressure, GaugePressure reference) {
        return Math.abs(pressure.minus(reference).pascals()) <= FURTHEST_PA;
    }

    /** The flow at the reference pressure. */
    public static FlowRate bring(FlowRate flow, GaugePressure pressure, GaugePressure reference) {
        return flow.times(StrictMath.exp(PER_PASCAL * pressure.minus(reference).pascals()));
    }

    /** The error that doing so brings in; all tests so treated share it. */
    public static SharedError error(GaugePressure pressure, GaugePressure reference) {
        return new SharedError(
                Cause.PRESSURE, "slope", pressure.minus(reference).pascals(), U_PER_PASCAL);
    }
}
