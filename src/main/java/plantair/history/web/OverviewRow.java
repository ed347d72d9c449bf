package plantair.history.web;

import org.jspecify.annotations.Nullable;
import plantair.web.Status;

/**
 * One machine in the overview, all text ready.
 *
 * @param id of the compressor
 * @param tag how the plant calls it
 * @param site its site
 * @param kind word for how it compresses
 * @param retired no longer in service
 * @param last its last test; null when it was never tested
 * @param direction which way its output goes
 */
public record OverviewRow(
        long id,
        String tag,
        String site,
        String kind,
        boolean retired,
        @Nullable LastTest last,
        Status direction) {

    /**
     * The last test.
     *
     * @param id of the test
     * @param date day of the test where it was made
     * @param daysAgo full days since then
     * @param flow free air delivered ± combined standard uncertainty; null when the runs were not averaged
     * @param pressure mid pressure of the test
     * @param ofRating percent of rating; null when it cannot be compared
     * @param ofBaseline percent of baseline ± its standard uncertainty; null where there is no comparison
     * @param baseline whether this test is itself the baseline
     * @param kept why it does not join the trend; null when it does, or has no flow
     * @param worst its worst finding
     */
    public record LastTest(
            long id,
            String date,
            long daysAgo,
            @Nullable String flow,
            String pressure,
            @Nullable String ofRating,
            @Nullable String ofBaseline,
            boolean baseline,
            @Nullable String kept,
            Status worst) {}
}
