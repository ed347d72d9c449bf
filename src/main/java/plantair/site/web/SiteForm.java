package plantair.site.web;

import java.util.Objects;
import java.util.Optional;
import plantair.pumpup.Station;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Entered;
import plantair.quantity.FixedUnit;
import plantair.quantity.Length;
import plantair.quantity.LengthUnit;
import plantair.quantity.PressureUnit;
import plantair.quantity.Rounded;
import plantair.register.EditForm;
import plantair.register.Submission;
import plantair.site.Site;
import plantair.site.SiteFacts;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** What a person types about a site. */
final class SiteForm {

    private static final double LOWEST_M = -500;
    private static final double HIGHEST_M = 5_000;
    private static final double LEAST_KPA = 50;
    private static final double MOST_KPA = 110;

    private String name = "";
    private String zone = "";
    private EnteredField elevation = new EnteredField();
    private EnteredField barometer = new EnteredField();
    private String currency = "";
    private EnteredField tariff = new EnteredField();
    private String note = "";
    private String confirmed = "";
    private EditForm edit = new EditForm();

    static SiteForm blank(UnitSet units) {
        var form = new SiteForm();
        form.zone = Zones.DEFAULT;
        form.elevation = EnteredField.blank(units.elevation());
        form.barometer = EnteredField.blank(barometerUnit(units));
        form.tariff = EnteredField.blank(FixedUnit.PER_KILOWATT_HOUR);
        form.edit = new EditForm();
        return form;
    }

    static SiteForm from(Site site, UnitSet units) {
        var facts = site.facts();
        var form = new SiteForm();
        form.name = facts.name();
        form.zone = facts.zone();
        form.elevation = EnteredField.of(facts.elevation(), units.elevation());
        form.barometer = EnteredField.of(facts.barometer(), barometerUnit(units));
        form.currency = Objects.requireNonNullElse(facts.currency(), "");
        form.tariff = EnteredField.of(facts.tariff(), FixedUnit.PER_KILOWATT_HOUR);
        form.note = facts.note();
        form.edit = EditForm.of(site);
        return form;
    }

    private static PressureUnit barometerUnit(UnitSet units) {
        return units == UnitSet.US ? PressureUnit.IN_HG : PressureUnit.HPA;
    }

    /** The facts; empty when something is wrong with what was typed. */
    Optional<SiteFacts> read(Submission sent) {
        var checks = sent.checks();
        var readName = checks.text("name", name, 80, true);
        var readNote = checks.text("note", note, 4_000, false);
        var readZone = readZone(sent);
        Optional<Entered> height = checks.optional("elevation", elevation, LengthUnit.class)
                .filter(typed -> isWithin(sent, "elevation", Length.of(typed).metres(), LOWEST_M, HIGHEST_M));
        Optional<Entered> pressure = checks.optional("barometer", barometer, PressureUnit.class)
                .filter(typed ->
                        isWithin(sent, "barometer", typed.value() > 0 ? kilopascals(typed) : 0, LEAST_KPA, MOST_KPA));
        var money = new Money(currency, tariff);
        var readCurrency = money.readCurrency(sent);
        var readTariff = money.readTariff(sent);
        if (elevation.isBlank() && barometer.isBlank()) {
            sent.reject("elevation.number", "site.station.missing");
        }
        if (height.isPresent() && pressure.isPresent()) {
            challenge(sent, height.get(), pressure.get());
        }
        if (readName.isEmpty() || readZone.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new SiteFacts(
                readName.get(),
                readZone.get(),
                height.orElse(null),
                pressure.orElse(null),
                readCurrency.orElse(null),
                readTariff.orElse(null),
                readNote.orElse("")));
    }

    private Optional<String> readZone(Submission sent) {
        if (Zones.isKnown(zone)) {
            return Optional.of(zone);
        }
        sent.reject("zone", zone.isBlank() ? "choice.missing" : "site.zone.unknown");
        return Optional.empty();
    }

    private static boolean isWithin(Submission sent, String path, double value, double low, double high) {
        boolean within = value >= low && value <= high;
        if (!within) {
            sent.reject(path + ".number", "site." + path + ".range");
        }
        return within;
    }

    /** A barometer reduced to sea level, as weather services give it, is too high for the elevation. */
    private static void challenge(Submission sent, Entered height, Entered pressure) {
        var station = new Station(AbsolutePressure.of(pressure), null, Length.of(height));
        if (station.isSuspect() && pressure.unit() instanceof PressureUnit unit) {
            String expected = Rounded.significant(station.expected().in(unit), 4) + " " + unit.symbol();
            sent.warnings()
                    .add("barometer", "site.barometer.suspect", pressure.toString(), height.toString(), expected);
        }
    }

    private static double kilopascals(Entered typed) {
        return AbsolutePressure.of(typed).in(PressureUnit.KPA);
    }

    public String getName() {
        return name;
    }

    public void setName(String name) {
        this.name = name;
    }

    public String getZone() {
        return zone;
    }

    public void setZone(String zone) {
        this.zone = zone;
    }

    public EnteredField getElevation() {
        return elevation;
    }

    public EnteredField getBarometer() {
        return barometer;
    }

    public String getCurrency() {
        return currency;
    }

    public void setCurrency(String currency) {
        this.currency = currency;
    }

    public EnteredField getTariff() {
        return tariff;
    }

    public String getNote() {
        return note;
    }

    public void setNote(String note) {
        this.note = note;
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
