package plantair.offer.web;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import plantair.offer.OfferFacts;
import plantair.offer.RegisteredOffer;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Entered;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.Power;
import plantair.quantity.Temperature;
import plantair.web.QuantityFormat;
import plantair.web.TypedText;
import plantair.web.UnitSet;

/**
 * An offer as it stands in the register, readings as typed and in a person's units.
 *
 * @param id its id
 * @param label whose offer, and of what
 * @param offeredOn day; null when not known
 * @param flow stated flow
 * @param basis name of its basis
 * @param pressure at which it is stated
 * @param power input power there
 * @param station pressure of the intake for which it is stated
 * @param temperature of that intake
 * @param humidity of that intake
 * @param price with its currency; null when not known
 * @param note free text
 * @param open false once it is withdrawn or lost
 */
record OfferView(
        long id,
        String label,
        @Nullable String offeredOn,
        String flow,
        String basis,
        String pressure,
        String power,
        String station,
        String temperature,
        String humidity,
        @Nullable String price,
        String note,
        boolean open) {

    static OfferView of(RegisteredOffer offer, UnitSet units) {
        OfferFacts facts = offer.facts();
        var format = QuantityFormat.of(units);
        return new OfferView(
                offer.id(),
                facts.label(),
                Objects.toString(facts.offeredOn(), null),
                text(TypedText.of(facts.flow(), units.flow(), typed -> format.flow(FlowRate.of(typed)))),
                facts.basis().name(),
                text(TypedText.of(facts.pressure(), units.pressure(), typed -> format.gauge(GaugePressure.of(typed)))),
                text(TypedText.of(facts.power(), units.power(), typed -> format.power(Power.of(typed)))),
                text(TypedText.of(
                        facts.station(), units.barometer(), typed -> format.absolute(AbsolutePressure.of(typed)))),
                text(TypedText.of(
                        facts.temperature(), units.temperature(), typed -> format.temperature(Temperature.of(typed)))),
                facts.humidity().toString(),
                facts.priced()
                        .map(price -> money(price, offer.site().facts().currency()))
                        .orElse(null),
                facts.note(),
                facts.open());
    }

    private static String money(Entered price, @Nullable String currency) {
        return currency == null ? price.number() : price.number() + " " + currency;
    }

    private static String text(@Nullable String typed) {
        return Objects.requireNonNull(typed);
    }
}
