package plantair.history;

/** What to do next with a machine. */
public enum NextStep {
    /** It was never tested. */
    FIRST_TEST,
    /** The last test went above the pressure that a receiver allows. */
    MAKE_SAFE,
    /** Work was done since the last test; the date is that of the work. */
    TEST_AFTER_EVENT,
    /** The last test is worth nothing, or stands alone with a low figure. */
    REPEAT,
    /** More air than can be true: most likely water in the receiver. */
    DRAIN_AND_REPEAT,
    /** The gauge was past its date or out of order. */
    CHECK_GAUGE,
    /** The static hold says that the shut volume leaks, or that something feeds in. */
    FIX_LEAK,
    /** The figure is low, and the tests are too uncertain to tell. */
    MEASURE_BETTER,
    /** Below the last limit. */
    ACT_NOW,
    /** Declining, and the line reaches the last limit; the date is the earliest day, at 80 %. */
    PLAN_REBUILD,
    /** Below a limit, without a line that foretells more. */
    CHECK_CHEAPEST_FIRST,
    /** Nothing but the next quarterly test; the date is its day. */
    NONE
}
