package plantair.demand.web;

import org.jspecify.annotations.Nullable;
import plantair.demand.SiteDemand;
import plantair.quantity.Entered;

/**
 * Something that takes air in the list of a site, as it was typed.
 *
 * @param id its id
 * @param label what and where
 * @param kind code of its kind
 * @param pieces how many
 * @param air from what its air is told
 * @param useFactor null where none was typed
 * @param reserve null where none was typed
 * @param leastPressure null where none was typed
 * @param note free text
 * @param inService false once it is out of use
 */
record RegisterRow(
        long id,
        String label,
        String kind,
        int pieces,
        String air,
        @Nullable String useFactor,
        @Nullable String reserve,
        @Nullable String leastPressure,
        String note,
        boolean inService) {

    static RegisterRow of(SiteDemand item, String air) {
        var facts = item.facts();
        return new RegisterRow(
                item.id(),
                facts.label(),
                facts.kind().name(),
                facts.pieces(),
                air,
                text(facts.useFactor()),
                text(facts.reserve()),
                text(facts.leastPressure()),
                facts.note(),
                facts.inService());
    }

    private static @Nullable String text(@Nullable Entered typed) {
        return typed == null ? null : typed.toString();
    }
}
