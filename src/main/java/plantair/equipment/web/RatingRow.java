package plantair.equipment.web;

import plantair.equipment.RatingEntry;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** One rating point in the form. */
final class RatingRow {

    private EnteredField pressure = new EnteredField();
    private EnteredField flow = new EnteredField();
    private String basis = "";

    static RatingRow blank(UnitSet units) {
        var row = new RatingRow();
        row.pressure = EnteredField.blank(units.pressure());
        row.flow = EnteredField.blank(units.flow());
        return row;
    }

    static RatingRow from(RatingEntry rating) {
        var row = new RatingRow();
        row.pressure = EnteredField.of(rating.pressure(), rating.pressure().unit());
        row.flow = EnteredField.of(rating.flow(), rating.flow().unit());
        row.basis = rating.basis().name();
        return row;
    }

    /** Whether nothing was typed or chosen, units aside. */
    boolean isBlank() {
        return pressure.isBlank() && flow.isBlank() && basis.isBlank();
    }

    public EnteredField getPressure() {
        return pressure;
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
}
