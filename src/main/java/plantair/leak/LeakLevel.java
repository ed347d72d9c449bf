package plantair.leak;

/**
 * How a leak compares with what plants lose: below a tenth of the output in a well-kept plant, a fifth to three tenths in a
 * neglected one. Source: tip sheet and sourcebook of the US Department of Energy (the 20 to 30 % read in a copy, the 10 % from
 * memory).
 */
public enum LeakLevel {
    /** Below 10 %. */
    WELL_KEPT,
    /** 10 to 20 %. */
    BETWEEN,
    /** 20 % or more. */
    NEGLECTED;

    private static final double WELL = 0.1;
    private static final double BADLY = 0.2;

    /**
     * The level of a share of the output.
     *
     * @param share zero or more
     */
    public static LeakLevel of(double share) {
        return share < WELL ? WELL_KEPT : share < BADLY ? BETWEEN : NEGLECTED;
    }
}
