package plantair.trend;

/** What the tests of a compressor say about its output over the years (T4). */
public enum TrendCode {
    /** No test, or one. */
    ONE_TEST,
    /** Two tests, or all tests on one day: a difference, no rate. */
    TWO_TESTS,
    /** The interval holds zero, and a decline that matters could not have been seen. */
    CANNOT_BE_TOLD_YET,
    /** The interval holds zero, and a decline that matters would have been seen. */
    NO_DECLINE_SEEN,
    /** Falling at 95 % confidence, not at 99 %, or too short a record for the stronger word. */
    SIGNS_OF_DECLINE,
    /** Falling at 99 % confidence. */
    DECLINING,
    /** Rising at 95 % confidence. */
    READS_HIGHER;

    /** Whether a decline is signalled. */
    public boolean isDecline() {
        return this == SIGNS_OF_DECLINE || this == DECLINING;
    }
}
