package plantair.web;

import org.jspecify.annotations.Nullable;
import plantair.quantity.DurationUnit;
import plantair.quantity.Entered;
import plantair.quantity.Unit;

/** Form bean of one reading: the typed number and the code of its unit, both as plain text. */
public final class EnteredField {

    private String number = "";
    private String unit = "";

    /** An empty field that proposes a unit. */
    public static EnteredField blank(Unit unit) {
        var field = new EnteredField();
        field.unit = unit.code();
        return field;
    }

    /** The field that shows a reading; blank when there is none. */
    public static EnteredField of(@Nullable Entered entered, Unit defaultUnit) {
        if (entered == null) {
            return blank(defaultUnit);
        }
        var field = blank(entered.unit() == DurationUnit.MINUTES_SECONDS ? DurationUnit.SECOND : entered.unit());
        field.number = entered.number();
        return field;
    }

    /** Whether no number was typed. */
    public boolean isBlank() {
        return number.isBlank();
    }

    public String getNumber() {
        return number;
    }

    public void setNumber(@Nullable String number) {
        this.number = number == null ? "" : number;
    }

    public String getUnit() {
        return unit;
    }

    public void setUnit(@Nullable String unit) {
        this.unit = unit == null ? "" : unit;
    }
}
