package plantair.web;

import java.util.List;
import java.util.stream.Stream;
import plantair.quantity.DurationUnit;
import plantair.quantity.FixedUnit;
import plantair.quantity.FlowUnit;
import plantair.quantity.LengthUnit;
import plantair.quantity.PowerUnit;
import plantair.quantity.PressureUnit;
import plantair.quantity.TemperatureUnit;
import plantair.quantity.Unit;
import plantair.quantity.VolumeUnit;

/** The units that a reading's select offers. */
public final class UnitChoices {

    private UnitChoices() {}

    /** Units of a pressure gauge in the compressed-air plant. */
    public static List<Choice> pressure() {
        return of(PressureUnit.PSI, PressureUnit.BAR, PressureUnit.KPA, PressureUnit.KGF_CM2);
    }

    /** Units of a barometer. */
    public static List<Choice> barometer() {
        return of(PressureUnit.IN_HG, PressureUnit.HPA, PressureUnit.KPA, PressureUnit.PSI, PressureUnit.BAR);
    }

    /** Units of volume. */
    public static List<Choice> volume() {
        return of(VolumeUnit.values());
    }

    /** Units of flow. */
    public static List<Choice> flow() {
        return of(FlowUnit.values());
    }

    /** Scales that a thermometer shows; no kelvin. */
    public static List<Choice> temperature() {
        return of(TemperatureUnit.FAHRENHEIT, TemperatureUnit.CELSIUS);
    }

    /** Units of elapsed time; minutes and seconds with a colon go with either. */
    public static List<Choice> duration() {
        return List.of(
                new Choice(DurationUnit.SECOND.code(), "s (or m:ss)"),
                new Choice(DurationUnit.MINUTE.code(), DurationUnit.MINUTE.symbol()));
    }

    /** Units of elevation and of pipe length. */
    public static List<Choice> elevation() {
        return of(LengthUnit.FOOT, LengthUnit.METRE);
    }

    /** Units of a pipe's bore. */
    public static List<Choice> bore() {
        return of(LengthUnit.INCH, LengthUnit.MILLIMETRE);
    }

    /** Units of power. */
    public static List<Choice> power() {
        return of(PowerUnit.values());
    }

    /** The only unit of a reading such as humidity or shaft speed. */
    public static List<Choice> only(FixedUnit unit) {
        return of(unit);
    }

    private static List<Choice> of(Unit... units) {
        return Stream.of(units)
                .map(unit -> new Choice(unit.code(), unit.symbol()))
                .toList();
    }
}
