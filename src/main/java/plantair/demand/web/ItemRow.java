package plantair.demand.web;

import org.jspecify.annotations.Nullable;

/**
 * What an item takes.
 *
 * @param id of the item; null for one that is only supposed
 * @param label what and where
 * @param source from what its air is told
 * @param note more about it, as wear; null where there is nothing
 * @param each air of one with its uncertainty, and how many; null where it cannot be told
 * @param share of the time in which one runs
 * @param use mean use
 * @param reserve what is added
 * @param need use with the reserve
 * @param peak all of them at once
 * @param drawnUse for drawing
 * @param drawnNeed for drawing
 */
record ItemRow(
        @Nullable Long id,
        String label,
        String source,
        @Nullable String note,
        @Nullable String each,
        String share,
        String use,
        String reserve,
        String need,
        String peak,
        String drawnUse,
        String drawnNeed) {}
