package plantair.demand;

/** For which place a figure of a use of air is stated. */
public enum StatedAt {
    /** For sea level, as plates and catalogs do. */
    SEA_LEVEL,
    /** For this place, as something measured here is. */
    HERE
}
