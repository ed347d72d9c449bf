package plantair.quantity;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A unit in which a reading may be typed or shown. Catalogue: docs/units.md. */
public interface Unit {

    /** The code in records, CSV and the API: UCUM, except {@link DurationUnit#MINUTES_SECONDS}. */
    String code();

    /** What people write beside the number. */
    String symbol();

    /** Every unit of the catalogue, by quantity. */
    static List<Unit> all() {
        return Stream.<Unit[]>of(
                        PressureUnit.values(),
                        VolumeUnit.values(),
                        FlowUnit.values(),
                        TemperatureUnit.values(),
                        DurationUnit.values(),
                        LengthUnit.values(),
                        PowerUnit.values(),
                        SpecificPowerUnit.values(),
                        FixedUnit.values())
                .flatMap(Stream::of)
                .toList();
    }

    /** The unit with this code; empty when the catalogue has none. */
    static Optional<Unit> byCode(String code) {
        return all().stream().filter(unit -> unit.code().equals(code)).findFirst();
    }
}
