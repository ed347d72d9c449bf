package plantair.pumpup;

import org.jspecify.annotations.Nullable;
import plantair.quantity.FlowRate;

/**
 * What one run says.
 *
 * @param run its number, from 1
 * @param handMethod flow by the hand method (M1)
 * @param freeAir free air delivered at intake conditions (M7 to M9)
 * @param start receiver air at the start as taken
 * @param stop receiver air at the stop, or settled, as taken
 * @param warming the factor applied; null unless the air was not measured
 */
public record RunResult(
        int run,
        FlowRate handMethod,
        FlowRate freeAir,
        ReceiverState start,
        ReceiverState stop,
        @Nullable WarmingFactor warming) {}
