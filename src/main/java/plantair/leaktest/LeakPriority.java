package plantair.leaktest;

/** How soon a leak should be mended. */
public enum LeakPriority {
    HIGH,
    MEDIUM,
    LOW
}
