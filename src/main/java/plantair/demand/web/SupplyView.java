package plantair.demand.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.web.Status;

/**
 * Supply and demand of a site as its page shows them.
 *
 * @param siteId the site
 * @param site its name
 * @param flowUnit unit of every flow
 * @param at pressure at which the supply is told; null where nothing is known
 * @param atFrom who says so
 * @param place barometric pressure, with what it does to figures of sea level
 * @param verdict the answer with the reserve
 * @param sentence the same in a sentence
 * @param questions all questions; empty while nothing can be answered
 * @param machines that count
 * @param leftOut machines that do not
 * @param totals sums of the two tables
 * @param leaks where the leaks come from
 * @param leakTest the leak test; null unless they come from one
 * @param items what takes air
 * @param notes what else is to be known
 */
record SupplyView(
        long siteId,
        String site,
        String flowUnit,
        @Nullable String at,
        String atFrom,
        String place,
        Status verdict,
        String sentence,
        List<QuestionRow> questions,
        List<MachineRow> machines,
        List<LeftOutRow> leftOut,
        @Nullable Totals totals,
        String leaks,
        @Nullable Long leakTest,
        List<ItemRow> items,
        List<String> notes) {

    /** Whether more than one machine counts. */
    public boolean isShared() {
        return machines.size() > 1;
    }

    /**
     * A flow as it is read, and for drawing.
     *
     * @param text with its uncertainty
     * @param drawn for drawing
     * @param u its standard uncertainty for drawing
     */
    record Sum(String text, String drawn, String u) {}

    /**
     * Sums of the two tables.
     *
     * @param capacity of all machines that count
     * @param leaks what is lost
     * @param net capacity less leaks
     * @param lost the same without the largest machine
     * @param lostLabel that machine
     * @param need with the reserves; null while nothing takes air
     * @param worn the same with worn nozzles; null where there are none
     */
    record Totals(
            Sum capacity,
            Sum leaks,
            Sum net,
            Sum lost,
            String lostLabel,
            @Nullable Sum need,
            @Nullable Sum worn) {}
}
