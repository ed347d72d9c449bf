package plantair.leaktest.web;

import plantair.leaktest.FallReading;
import plantair.quantity.DurationUnit;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** One reading of a fall as a person types it. */
final class FallRow {

    private EnteredField at = EnteredField.blank(DurationUnit.SECOND);
    private EnteredField pressure = new EnteredField();

    static FallRow blank(UnitSet units) {
        var row = new FallRow();
        row.pressure = EnteredField.blank(units.pressure());
        return row;
    }

    static FallRow from(FallReading reading, UnitSet units) {
        var row = new FallRow();
        row.at = EnteredField.of(reading.atTime(), DurationUnit.SECOND);
        row.pressure = EnteredField.of(reading.pressure(), units.pressure());
        return row;
    }

    boolean isBlank() {
        return at.isBlank() && pressure.isBlank();
    }

    public EnteredField getAt() {
        return at;
    }

    public EnteredField getPressure() {
        return pressure;
    }
}
