package plantair.storage.web;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.demand.ItemUse;
import plantair.quantity.Entered;
import plantair.quantity.FlowRate;

/**
 * An event among the demand of a site.
 *
 * @param id of the item in the register
 * @param label what it is
 * @param peak free air that all of it takes while it lasts
 * @param lasts how long, as typed; null where nobody said
 * @param least pressure that it needs, as typed; null where nobody said
 */
public record StorageEvent(
        long id,
        String label,
        FlowRate peak,
        @Nullable Entered lasts,
        @Nullable Entered least) {

    /** Empty where its air cannot be told. */
    static Optional<StorageEvent> of(ItemUse use) {
        return Optional.ofNullable(use.id())
                .flatMap(id -> Optional.ofNullable(use.item())
                        .map(item -> new StorageEvent(
                                id,
                                use.facts().label(),
                                item.peak(),
                                use.facts().eventLength(),
                                use.facts().leastPressure())));
    }
}
