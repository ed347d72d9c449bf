package plantair.runlog;

/** From where a logger counts pressure. */
public enum PressureReference {
    /** From the pressure of the place. */
    GAUGE,
    /** From nothing: the station pressure of the test is taken off. */
    ABSOLUTE
}
