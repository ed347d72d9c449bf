package plantair.offer.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.offer.RegisteredOffer;
import plantair.quantity.Entered;
import plantair.quantity.FixedUnit;
import plantair.quantity.TemperatureUnit;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** Form bean of a comparison of offers. */
public final class CompareForm {

    private List<String> offers = new ArrayList<>();
    private EnteredField pressure = new EnteredField();
    private EnteredField temperature = new EnteredField();
    private EnteredField humidity = new EnteredField();
    private EnteredField flow = new EnteredField();
    private EnteredField hours = new EnteredField();
    private EnteredField tariff = new EnteredField();

    /** True when the address had nothing in it, so that the usual things are to be filled in. */
    boolean isUntouched() {
        return offers.isEmpty() && pressure.getUnit().isBlank();
    }

    /** Every open offer, at the pressure of the first, in air of 20 °C and 50 %. */
    void fill(List<RegisteredOffer> open, UnitSet units) {
        open.forEach(offer -> offers.add(String.valueOf(offer.id())));
        Optional<Entered> first =
                open.stream().map(offer -> offer.facts().pressure()).findFirst();
        pressure = EnteredField.of(first.orElse(null), units.pressure());
        temperature = EnteredField.of(new Entered("20", TemperatureUnit.CELSIUS), TemperatureUnit.CELSIUS);
        humidity = EnteredField.of(new Entered("50", FixedUnit.PERCENT), FixedUnit.PERCENT);
        flow = EnteredField.blank(units.flow());
        hours = EnteredField.blank(FixedUnit.HOUR);
        tariff = EnteredField.blank(FixedUnit.PER_KILOWATT_HOUR);
    }

    public List<String> getOffers() {
        return offers;
    }

    public void setOffers(@Nullable List<String> offers) {
        this.offers = offers == null ? new ArrayList<>() : offers;
    }

    public EnteredField getPressure() {
        return pressure;
    }

    public EnteredField getTemperature() {
        return temperature;
    }

    public EnteredField getHumidity() {
        return humidity;
    }

    public EnteredField getFlow() {
        return flow;
    }

    public EnteredField getHours() {
        return hours;
    }

    public EnteredField getTariff() {
        return tariff;
    }
}
