package plantair.pumpup;

/**
 * The band to use.
 *
 * @param row the band
 * @param reason why this one
 */
public record Recommendation(PlanRow row, Reason reason) {

    /** Why a band is recommended. */
    public enum Reason {
        /** The band nearest to the stop pressure that is good enough from test to test and long enough. */
        GOOD_ENOUGH,
        /** None is good enough; of those that are long enough this is the best. */
        BEST_THERE_IS,
        /** None is long enough for a hand on a stopwatch; this is the longest. */
        ALL_TOO_SHORT
    }
}
