package plantair.quantity;

/**
 * A flow with all that it needs to be used: its basis and how sure it is.
 *
 * @param flow the best value
 * @param standardUncertainty k = 1, zero or more
 * @param basis what the flow refers to
 */
public record MeasuredFlow(FlowRate flow, FlowRate standardUncertainty, FlowBasis basis) {

    /** @throws IllegalArgumentException when the uncertainty is below zero */
    public MeasuredFlow {
        Checks.notNegative(standardUncertainty.cubicMetresPerSecond(), "standardUncertainty");
    }

    /**
     * A flow that is sure to a part of it.
     *
     * @param relativeU relative standard uncertainty, zero or more
     */
    public static MeasuredFlow of(FlowRate flow, double relativeU, FlowBasis basis) {
        return new MeasuredFlow(flow, flow.times(Math.signum(flow.cubicMetresPerSecond()) * relativeU), basis);
    }
}
