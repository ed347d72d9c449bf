package plantair.leaktest;

/** How a leak was measured. */
public enum LeakTestKind {
    /** Times loaded, unloaded and standing of a compressor that feeds nothing but leaks. */
    LOAD_TIMES,
    /** First and last reading of the pressure of a shut volume. */
    TWO_READINGS,
    /** Many readings of the same. */
    FALL
}
