package plantair.demand;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.supply.DemandItem;

/**
 * What one item takes.
 *
 * @param id of the item in the register; null for one that is only supposed
 * @param facts what is said of it
 * @param item its air, with the reserve and the uncertainty that count; null where that cannot be told
 * @param worn the same with the nozzle worn to the next bore; null where it is no blast nozzle, or the widest
 */
public record ItemUse(
        @Nullable Long id,
        DemandFacts facts,
        @Nullable DemandItem item,
        @Nullable DemandItem worn) {

    /** Its air; empty where it cannot be told. */
    Optional<DemandItem> now() {
        return Optional.ofNullable(item);
    }

    /** Its air when every nozzle is worn to the next bore. */
    Optional<DemandItem> later() {
        return Optional.ofNullable(worn == null ? item : worn);
    }
}
