package plantair.due;

/** How near it is; in the order of the list. */
public enum DueState {
    /** Its day is past. */
    OVERDUE,
    /** It is wanted, and none is on record. */
    NEVER,
    /** Its day comes within a month. */
    SOON,
    /** Its day is further off. */
    LATER,
    /** No interval is set, so no day can be told. */
    NO_INTERVAL
}
