package plantair.vessel.web;

import plantair.vessel.WallEntry;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** One reading of the wall as a person types it. */
final class WallRow {

    private String place = "";
    private String part = "";
    private EnteredField thickness = new EnteredField();

    static WallRow blank(UnitSet units) {
        var row = new WallRow();
        row.thickness = EnteredField.blank(units.bore());
        return row;
    }

    static WallRow from(WallEntry entry, UnitSet units) {
        var row = named(entry, units);
        row.thickness = EnteredField.of(entry.thickness(), units.bore());
        return row;
    }

    /** The place of an earlier reading, to be measured again. */
    static WallRow named(WallEntry entry, UnitSet units) {
        var row = blank(units);
        row.place = entry.place();
        row.part = entry.part().name();
        row.thickness = EnteredField.blank(entry.thickness().unit());
        return row;
    }

    /** Whether no thickness was typed; a place alone is only offered. */
    boolean isBlank() {
        return thickness.isBlank();
    }

    public String getPlace() {
        return place;
    }

    public void setPlace(String place) {
        this.place = place;
    }

    public String getPart() {
        return part;
    }

    public void setPart(String part) {
        this.part = part;
    }

    public EnteredField getThickness() {
        return thickness;
    }
}
