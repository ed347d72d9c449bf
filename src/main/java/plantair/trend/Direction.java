package plantair.trend;

/** Which way the delivered flow goes, at 95 % confidence (T4). */
public enum Direction {
    /** No line yet: fewer than three tests, or all on one day. */
    NONE_YET,
    /** The interval of the yearly change lies below zero. */
    FALLING,
    /** The interval of the yearly change lies above zero. */
    RISING,
    /** The interval of the yearly change holds zero. */
    CANNOT_BE_TOLD
}
