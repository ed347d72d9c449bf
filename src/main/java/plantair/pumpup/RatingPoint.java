package plantair.pumpup;

import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;

/**
 * One point of what the maker states.
 *
 * @param pressure discharge pressure of the rating
 * @param flow rated flow, above zero
 * @param basis what that flow refers to
 */
public record RatingPoint(GaugePressure pressure, FlowRate flow, FlowBasis basis) {

    /** @throws IllegalArgumentException when the flow is not above zero */
    public RatingPoint {
        if (!(flow.cubicMetresPerSecond() > 0)) {
            throw new IllegalArgumentException("rated flow must be positive: " + flow);
        }
    }
}
