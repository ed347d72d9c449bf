package plantair.equipment;

/** How the motor turns the compressor. */
public enum Drive {
    /** By belt. */
    BELT,
    /** By a coupling or on one shaft. */
    DIRECT,
    /** By gears. */
    GEAR,
    /** Not known. */
    UNKNOWN
}
