package plantair.instrument.web;

import plantair.instrument.AsFound;
import plantair.quantity.Unit;
import plantair.web.EnteredField;

/** One point of a calibration in the form. */
final class PointRow {

    private EnteredField reading = new EnteredField();
    private EnteredField error = new EnteredField();

    static PointRow blank(Unit unit) {
        var row = new PointRow();
        row.reading = EnteredField.blank(unit);
        row.error = EnteredField.blank(unit);
        return row;
    }

    static PointRow from(AsFound point) {
        var row = new PointRow();
        row.reading = EnteredField.of(point.reading(), point.reading().unit());
        row.error = EnteredField.of(point.error(), point.error().unit());
        return row;
    }

    /** Whether nothing was typed, units aside. */
    boolean isBlank() {
        return reading.isBlank() && error.isBlank();
    }

    public EnteredField getReading() {
        return reading;
    }

    public EnteredField getError() {
        return error;
    }
}
