package plantair.demand;

/** Where the leaks of a site come from that its supply is told less of. */
public enum LeaksFrom {
    /** Its newest leak test. */
    TEST,
    /** A figure that somebody typed. */
    TYPED,
    /** None are counted. */
    NONE
}
