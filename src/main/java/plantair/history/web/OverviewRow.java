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
 * @param overdue that its next test is; null when it is not
 * @param next what to do next; null for a retired machine
 */
public record OverviewRow(
        long id,
        String tag,
        String site,
        String kind,
        boolean retired,
        @Nullable LastTest last,
        @Nullable Status overdue,
        @Nullable String next) {

    /**
     * The last tests.
     *
     * @param id of the last test
     * @param date day of that test where it was made
     * @param daysAgo full days since then
     * @param flow free air delivered ± combined standard uncertainty; null when the runs were not averaged
     * @param pressure mid pressure of the test
     * @param worst its worst finding when that is a hazard or a stop; null otherwise
     * @param standing against the limits of the plant
     * @param direction which way its output goes
     * @param compared the last test that joins the trend; null when there is none
     * @param kept why the last test does not join it; null when it does, or has no flow
     * @param line the last tests as a small picture; null without a flow
     */
    public record LastTest(
            long id,
            String date,
            long daysAgo,
            @Nullable String flow,
            String pressure,
            @Nullable Status worst,
            Status standing,
            Status direction,
            @Nullable Compared compared,
            @Nullable String kept,
            @Nullable SmallLine line) {}

    /**
     * The last test that joins the trend.
     *
     * @param ofBaseline percent of baseline ± its standard uncertainty; null where there is no comparison
     * @param baseline whether it is itself a baseline
     * @param date its day; null when it is the last test
     */
    public record Compared(
            @Nullable String ofBaseline,
            boolean baseline,
            @Nullable String date) {}
}
