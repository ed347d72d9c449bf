package plantair.cost.web;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.leaktest.SiteLeak;
import plantair.supply.AirPrice;
import plantair.supply.SiteSpecificPower;

/**
 * What is to be reckoned, all understood.
 *
 * @param specific power for each flow; null when not known
 * @param specificTyped whether it was typed here
 * @param hours under pressure in a year
 * @param hoursTyped whether they were typed here
 * @param tariff money for a kilowatt hour; null when not known
 * @param tariffTyped whether it was typed here
 * @param currency of it; empty when not known
 * @param idlePart power while unloaded over power while loaded; null when not said
 * @param leak the leak that is told; null when no test tells one
 * @param after the leak after repairs; null when none is to be held beside it
 */
record CostQuestion(
        @Nullable SiteSpecificPower specific,
        boolean specificTyped,
        double hours,
        boolean hoursTyped,
        @Nullable Double tariff,
        boolean tariffTyped,
        String currency,
        @Nullable Double idlePart,
        @Nullable SiteLeak leak,
        @Nullable SiteLeak after) {

    /** The price of the air; empty when the specific power is not known. */
    Optional<AirPrice> price() {
        return specific == null
                ? Optional.empty()
                : Optional.of(new AirPrice(specific.value(), specific.relativeU(), hours, tariff));
    }
}
