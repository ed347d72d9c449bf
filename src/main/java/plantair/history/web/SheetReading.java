package plantair.history.web;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import plantair.equipment.CompressorKind;
import plantair.equipment.CompressorPlate;
import plantair.equipment.Drive;

/** What the run sheet asks to be read of a machine each quarter. */
enum SheetReading {
    /** Hour meter. */
    HOURS,
    /** Meter of loaded hours. */
    LOADED_HOURS,
    /** Motor current. */
    CURRENT,
    /** Shaft speed. */
    SPEED,
    /** Pressure between the stages. */
    INTERSTAGE,
    /** Where the air leaves the machine. */
    DISCHARGE,
    /** Oil at the glass. */
    OIL,
    /** Drop over the intake filter. */
    FILTER,
    /** Drop over the oil separator. */
    SEPARATOR,
    /** Look of the belt. */
    BELT,
    /** What is heard. */
    NOISE;

    private static final Set<CompressorKind> WITH_SEPARATOR = EnumSet.of(CompressorKind.SCREW, CompressorKind.VANE);

    /** Those that a machine of this plate has. */
    static List<SheetReading> of(CompressorPlate plate) {
        Set<SheetReading> readings = EnumSet.allOf(SheetReading.class);
        if (plate.stages() < 2) {
            readings.remove(INTERSTAGE);
        }
        if (!WITH_SEPARATOR.contains(plate.kind())) {
            readings.remove(SEPARATOR);
        }
        if (plate.kind() == CompressorKind.PISTON) {
            readings.remove(LOADED_HOURS);
        }
        if (plate.kind() == CompressorKind.SCROLL) {
            readings.remove(OIL);
        }
        if (plate.drive() != Drive.BELT) {
            readings.remove(BELT);
        }
        return List.copyOf(readings);
    }
}
