package plantair.pumpup;

import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;

/**
 * The delivered flow on a named reference (M11).
 *
 * @param basis the reference
 * @param flow the flow on it
 */
public record StandardFlow(FlowBasis basis, FlowRate flow) {}
