package plantair.pumpup;

/** How much a finding matters, least first. */
public enum Severity {
    /** Good to know. */
    NOTE,
    /** The result is weaker than it looks. */
    CAUTION,
    /** The figure must not be used as it stands. */
    STOP,
    /** Somebody may get hurt. */
    HAZARD
}
