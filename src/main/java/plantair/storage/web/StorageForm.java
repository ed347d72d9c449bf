package plantair.storage.web;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.quantity.DurationUnit;
import plantair.quantity.Entered;
import plantair.quantity.Rounded;
import plantair.quantity.Unit;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** Form bean of a question about storage. */
public final class StorageForm {

    private static final int PEAK_DIGITS = 4;

    private List<String> receivers = new ArrayList<>();
    private EnteredField more = new EnteredField();
    private EnteredField cutOut = new EnteredField();
    private EnteredField cutIn = new EnteredField();
    private EnteredField lowest = new EnteredField();
    private EnteredField event = new EnteredField();
    private EnteredField lasts = new EnteredField();
    private EnteredField steady = new EnteredField();
    private List<String> machines = new ArrayList<>();
    private EnteredField capacity = new EnteredField();
    private EnteredField leaks = new EnteredField();
    private String control = "";
    private String use = "";

    /** True when the address had nothing in it. */
    boolean isUntouched() {
        return receivers.isEmpty() && machines.isEmpty() && cutIn.getUnit().isBlank() && event.isBlank();
    }

    /** Takes over what the register says of an event. */
    void take(StorageEvent from, UnitSet units) {
        event = EnteredField.of(
                new Entered(Rounded.significant(from.peak().in(units.flow()), PEAK_DIGITS), units.flow()),
                units.flow());
        lasts = EnteredField.of(from.lasts(), DurationUnit.MINUTE);
        lowest = EnteredField.of(from.least(), units.pressure());
    }

    /** Proposes units where none was sent. */
    void propose(UnitSet units) {
        more = proposed(more, units.vessel());
        cutOut = proposed(cutOut, units.pressure());
        cutIn = proposed(cutIn, units.pressure());
        lowest = proposed(lowest, units.pressure());
        event = proposed(event, units.flow());
        lasts = proposed(lasts, DurationUnit.MINUTE);
        steady = proposed(steady, units.flow());
        capacity = proposed(capacity, units.flow());
        leaks = proposed(leaks, units.flow());
    }

    private static EnteredField proposed(EnteredField field, Unit unit) {
        return field.isBlank() && field.getUnit().isBlank() ? EnteredField.blank(unit) : field;
    }

    public List<String> getReceivers() {
        return receivers;
    }

    public void setReceivers(@Nullable List<String> receivers) {
        this.receivers = receivers == null ? new ArrayList<>() : receivers;
    }

    public EnteredField getMore() {
        return more;
    }

    public EnteredField getCutOut() {
        return cutOut;
    }

    public EnteredField getCutIn() {
        return cutIn;
    }

    public EnteredField getLowest() {
        return lowest;
    }

    public EnteredField getEvent() {
        return event;
    }

    public EnteredField getLasts() {
        return lasts;
    }

    public EnteredField getSteady() {
        return steady;
    }

    public List<String> getMachines() {
        return machines;
    }

    public void setMachines(@Nullable List<String> machines) {
        this.machines = machines == null ? new ArrayList<>() : machines;
    }

    public EnteredField getCapacity() {
        return capacity;
    }

    public EnteredField getLeaks() {
        return leaks;
    }

    public String getControl() {
        return control;
    }

    public void setControl(String control) {
        this.control = control;
    }

    /** The event of the demand that fills the form; empty for none. */
    public String getUse() {
        return use;
    }

    public void setUse(String use) {
        this.use = use;
    }
}
