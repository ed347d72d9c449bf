package plantair.cost.web;

import plantair.quantity.FixedUnit;
import plantair.quantity.SpecificPowerUnit;
import plantair.web.EnteredField;

/** Form bean of the cost of air: what a person would rather reckon with. Blank is what is known. */
public final class CostForm {

    private EnteredField specific = new EnteredField();
    private EnteredField hours = EnteredField.blank(FixedUnit.HOUR);
    private EnteredField tariff = EnteredField.blank(FixedUnit.PER_KILOWATT_HOUR);
    private EnteredField idle = EnteredField.blank(FixedUnit.PERCENT);
    private String leak = "";
    private String after = "";

    /** Proposes the unit of what is blank. */
    void propose(SpecificPowerUnit unit) {
        if (specific.isBlank() && specific.getUnit().isBlank()) {
            specific = EnteredField.blank(unit);
        }
    }

    public EnteredField getSpecific() {
        return specific;
    }

    public EnteredField getHours() {
        return hours;
    }

    public EnteredField getTariff() {
        return tariff;
    }

    public EnteredField getIdle() {
        return idle;
    }

    public String getLeak() {
        return leak;
    }

    public void setLeak(String leak) {
        this.leak = leak;
    }

    public String getAfter() {
        return after;
    }

    public void setAfter(String after) {
        this.after = after;
    }
}
