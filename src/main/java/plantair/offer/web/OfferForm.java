package plantair.offer.web;

import java.util.Objects;
import java.util.Optional;
import plantair.offer.OfferFacts;
import plantair.offer.RegisteredOffer;
import plantair.quantity.Entered;
import plantair.quantity.FixedUnit;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowUnit;
import plantair.quantity.PowerUnit;
import plantair.quantity.PressureUnit;
import plantair.quantity.TemperatureUnit;
import plantair.register.EditForm;
import plantair.register.Submission;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** What a person types about an offer. */
final class OfferForm {

    private String label = "";
    private String offeredOn = "";
    private EnteredField flow = new EnteredField();
    private String basis = "";
    private EnteredField pressure = new EnteredField();
    private EnteredField power = new EnteredField();
    private EnteredField station = new EnteredField();
    private EnteredField temperature = new EnteredField();
    private EnteredField humidity = new EnteredField();
    private EnteredField price = new EnteredField();
    private String note = "";
    private String open = "";
    private String confirmed = "";
    private EditForm edit = new EditForm();

    /** With the intake at which ISO 1217 has flows stated. */
    static OfferForm blank(UnitSet units) {
        var form = new OfferForm();
        form.flow = EnteredField.blank(units.flow());
        form.pressure = EnteredField.blank(units.pressure());
        form.power = EnteredField.blank(PowerUnit.KW);
        form.station = EnteredField.of(new Entered("100", PressureUnit.KPA), PressureUnit.KPA);
        form.temperature = EnteredField.of(new Entered("20", TemperatureUnit.CELSIUS), TemperatureUnit.CELSIUS);
        form.humidity = EnteredField.of(new Entered("0", FixedUnit.PERCENT), FixedUnit.PERCENT);
        form.price = EnteredField.blank(FixedUnit.MONEY);
        form.open = "true";
        return form;
    }

    static OfferForm from(RegisteredOffer offer) {
        OfferFacts facts = offer.facts();
        var form = new OfferForm();
        form.label = facts.label();
        form.offeredOn = Objects.toString(facts.offeredOn(), "");
        form.flow = EnteredField.of(facts.flow(), FlowUnit.CFM);
        form.basis = facts.basis().name();
        form.pressure = EnteredField.of(facts.pressure(), PressureUnit.PSI);
        form.power = EnteredField.of(facts.power(), PowerUnit.KW);
        form.station = EnteredField.of(facts.station(), PressureUnit.KPA);
        form.temperature = EnteredField.of(facts.temperature(), TemperatureUnit.CELSIUS);
        form.humidity = EnteredField.of(facts.humidity(), FixedUnit.PERCENT);
        form.price = EnteredField.of(facts.price(), FixedUnit.MONEY);
        form.note = facts.note();
        form.open = String.valueOf(facts.open());
        form.edit = EditForm.of(offer);
        return form;
    }

    /** The facts; empty when something is wrong with what was typed. */
    Optional<OfferFacts> read(Submission sent) {
        var checks = sent.checks();
        var readings = new OfferReadings(checks);
        var readLabel = checks.text("label", label, 80, true);
        var day = checks.date("offeredOn", offeredOn, false);
        var readFlow = checks.positive("flow", checks.required("flow", flow, FlowUnit.class));
        var readBasis = checks.choice("basis", basis, FlowBasis.class);
        var at = readings.pressure("pressure", pressure);
        var input = checks.positive("power", checks.required("power", power, PowerUnit.class));
        var barometer = readings.station("station", station);
        var air = readings.temperature("temperature", temperature);
        var moist = readings.humidity("humidity", humidity);
        var money = checks.positive("price", checks.optional("price", price, FixedUnit.MONEY));
        var readNote = checks.text("note", note, 4_000, false);
        if (sent.errors().hasErrors()) {
            return Optional.empty();
        }
        return Optional.of(new OfferFacts(
                readLabel.orElseThrow(),
                day.orElse(null),
                readFlow.orElseThrow(),
                readBasis.orElseThrow(),
                at.orElseThrow(),
                input.orElseThrow(),
                barometer.orElseThrow(),
                air.orElseThrow(),
                moist.orElseThrow(),
                money.orElse(null),
                readNote.orElse(""),
                Boolean.parseBoolean(open)));
    }

    public String getLabel() {
        return label;
    }

    public void setLabel(String label) {
        this.label = label;
    }

    public String getOfferedOn() {
        return offeredOn;
    }

    public void setOfferedOn(String offeredOn) {
        this.offeredOn = offeredOn;
    }

    public EnteredField getFlow() {
        return flow;
    }

    public String getBasis() {
        return basis;
    }

    public void setBasis(String basis) {
        this.basis = basis;
    }

    public EnteredField getPressure() {
        return pressure;
    }

    public EnteredField getPower() {
        return power;
    }

    public EnteredField getStation() {
        return station;
    }

    public EnteredField getTemperature() {
        return temperature;
    }

    public EnteredField getHumidity() {
        return humidity;
    }

    public EnteredField getPrice() {
        return price;
    }

    public String getNote() {
        return note;
    }

    public void setNote(String note) {
        this.note = note;
    }

    public String getOpen() {
        return open;
    }

    public void setOpen(String open) {
        this.open = open;
    }

    public String getConfirmed() {
        return confirmed;
    }

    public void setConfirmed(String confirmed) {
        this.confirmed = confirmed;
    }

    public EditForm getEdit() {
        return edit;
    }
}
