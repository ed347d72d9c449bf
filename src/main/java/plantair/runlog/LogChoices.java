package plantair.runlog;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import org.jspecify.annotations.Nullable;
import plantair.quantity.PressureUnit;
import plantair.quantity.Unit;

/**
 * How a logger's file is read. Columns are counted from 1.
 *
 * @param textCode how its bytes stand for letters
 * @param separator what stands between columns
 * @param decimalMark the mark before decimals
 * @param skippedLines lines at the top that hold no readings
 * @param leaveOutUnreadable whether lines that cannot be read are left out; else they forbid to take the file
 * @param dayColumn column of the day, where it does not stand with the time; null else
 * @param timeColumn column of the time
 * @param timeFormat how times are written
 * @param pressureColumn column of the pressure
 * @param pressureUnit code of its unit
 * @param reference from where pressure is counted
 */
@Embeddable
public record LogChoices(
        @Enumerated(EnumType.STRING) TextCode textCode,
        @Enumerated(EnumType.STRING) Separator separator,
        @Enumerated(EnumType.STRING) DecimalMark decimalMark,
        int skippedLines,
        boolean leaveOutUnreadable,
        @Nullable Integer dayColumn,
        int timeColumn,
        @Enumerated(EnumType.STRING) TimeFormat timeFormat,
        int pressureColumn,
        String pressureUnit,

        @Enumerated(EnumType.STRING) @Column(name = "pressure_reference")
        PressureReference reference) {

    /** The unit of the pressure. */
    public PressureUnit unit() {
        return Unit.byCode(pressureUnit)
                .filter(PressureUnit.class::isInstance)
                .map(PressureUnit.class::cast)
                .orElseThrow(() -> new IllegalStateException("no unit of pressure: " + pressureUnit));
    }
}
