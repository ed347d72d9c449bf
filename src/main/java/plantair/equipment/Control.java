package plantair.equipment;

/** How the machine follows demand. */
public enum Control {
    /** Motor starts at cut-in and stops at cut-out. */
    START_STOP,
    /** Motor runs on; the machine loads and unloads. */
    LOAD_UNLOAD,
    /** The inlet throttles. */
    MODULATING,
    /** Speed follows the pressure. */
    VARIABLE_SPEED,
    /** Not known. */
    UNKNOWN
}
