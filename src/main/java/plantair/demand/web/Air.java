package plantair.demand.web;

import org.jspecify.annotations.Nullable;
import plantair.demand.NozzleEdge;
import plantair.demand.StatedAt;
import plantair.quantity.Entered;
import plantair.quantity.FlowBasis;
import plantair.supply.BlastNozzle;

/**
 * The air of one item as it was read from a form.
 *
 * @param flow null where a nozzle tells it
 * @param basis of the flow
 * @param stated for which place the flow is stated
 * @param nozzle null where it is no blast nozzle
 * @param bore null where it is no open nozzle
 * @param edge of the bore
 * @param pressure gauge; null where nobody knows
 */
record Air(
        @Nullable Entered flow,
        @Nullable FlowBasis basis,
        @Nullable StatedAt stated,
        @Nullable BlastNozzle nozzle,
        @Nullable Entered bore,
        @Nullable NozzleEdge edge,
        @Nullable Entered pressure) {}
