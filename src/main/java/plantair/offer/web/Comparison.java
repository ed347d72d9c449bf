package plantair.offer.web;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.Intake;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.supply.Offer;

/**
 * What is compared, and how: all understood.
 *
 * @param offers those chosen
 * @param intake of the site
 * @param pressure of the site
 * @param need free air that is to be made; null for that of the smallest offer
 * @param hours in a year
 * @param tariff money for a kilowatt hour; null when not known
 * @param currency of it; null when not known
 */
record Comparison(
        List<Chosen> offers,
        Intake intake,
        GaugePressure pressure,
        @Nullable FlowRate need,
        double hours,
        @Nullable Double tariff,
        @Nullable String currency) {

    /** An offer and its number. */
    record Chosen(long id, String stated, Offer offer) {

        Optional<Offer.AtSite> at(Comparison comparison) {
            return offer.at(comparison.intake(), comparison.pressure());
        }
    }
}
