package plantair.pumpup;

import plantair.quantity.FlowRate;

/**
 * Acceptance tolerance on volume flow (M15): below 0.5 m³/min ± 7 %, to 1.5 ± 6 %, to 15 ± 5 %, above ± 4 %; on specific
 * power one percent more each (S25). It was made for the acceptance test of the standard, not for a pump-up test, and serves
 * here as context. Source: ISO 1217:2009 annex C, also printed in trade data sheets (from memory).
 */
public final class RatingTolerance {

    private static final double[] UP_TO_M3_PER_MIN = {0.5, 1.5, 15};
    private static final double[] TOLERANCE = {0.07, 0.06, 0.05, 0.04};
    private static final double[] OF_SPECIFIC_POWER = {0.08, 0.07, 0.06, 0.05};

    private RatingTolerance() {}

    /** Tolerance as a part of the rated flow. */
    public static double of(FlowRate rated) {
        return TOLERANCE[step(rated)];
    }

    /** Tolerance of the power for each flow as a part of it. */
    public static double ofSpecificPower(FlowRate rated) {
        return OF_SPECIFIC_POWER[step(rated)];
    }

    private static int step(FlowRate rated) {
        double perMinute = rated.cubicMetresPerSecond() * 60;
        int step = 0;
        while (step < UP_TO_M3_PER_MIN.length && perMinute >= UP_TO_M3_PER_MIN[step]) {
            step++;
        }
        return step;
    }
}
