package plantair.leak;

/** What is said of a fall of pressure that was read many times. Catalogue: docs/supply.md. */
public enum LeakCode {
    /** Times run backwards. The number is how often. */
    TIME_FALLS(true),
    /** Fewer than four readings are left. The number is how many. */
    FEW_READINGS(true),
    /** All readings are of one moment. */
    NO_TIME(true),
    /** Early readings, in which the air still cools, were left out. The number is how many. */
    LEFT_EARLY(false),
    /** Readings too low for choked holes were left out. The number is how many. */
    LEFT_LOW(false),
    /** The fall slows down more than a leak does: the air still cools. The number is t of the bend. */
    STILL_SETTLING(false),
    /** The fall speeds up: another hole opened, or somebody took air. The number is t of the bend. */
    LEAK_GROWS(false),
    /** The pressure rose. The number is k over its uncertainty. */
    ROSE(false),
    /** The fall is no more than its uncertainty lets tell. The number is k over its uncertainty. */
    NO_LEAK_TOLD(false);

    private final boolean stop;

    LeakCode(boolean stop) {
        this.stop = stop;
    }

    /** True when nothing can be fitted. */
    public boolean isStop() {
        return stop;
    }
}
