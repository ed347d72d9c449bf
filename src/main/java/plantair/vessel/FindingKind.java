package plantair.vessel;

/** Damage that somebody may see on a receiver. */
public enum FindingKind {
    /** The wall bulges. */
    BULGE,
    /** Rust that has eaten into the wall. */
    DEEP_RUST,
    /** Air or water weeps out. */
    WEEPING,
    /** A weld or repair that is not on record. */
    WELD_REPAIR,
    /** The drain is plugged or gives nothing. */
    PLUGGED_DRAIN,
    /** There is no plate that can be read. */
    NO_PLATE,
    /** The relief valve leaks, or its lever is stuck. */
    VALVE_LEAKING,
    /** Something else; its note says what. */
    OTHER
}
