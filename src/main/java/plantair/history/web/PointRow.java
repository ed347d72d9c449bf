package plantair.history.web;

import org.jspecify.annotations.Nullable;
import plantair.web.Status;

/**
 * A current test in chart and table.
 *
 * @param id of the test
 * @param date its day
 * @param flow free air delivered for comparison; null when the runs were not averaged
 * @param random standard uncertainty from what differs between tests; null with {@code flow}
 * @param combined standard uncertainty with everything in it; null with {@code flow}
 * @param referred the flow at the pressure of the baseline; null when it was made there
 * @param ofBaseline percent of baseline ± its standard uncertainty; null where there is no comparison
 * @param baseline whether it is a baseline
 * @param line flow on the line at that day; null without a line
 * @param kept why it does not join the trend; null when it does, or has no flow
 * @param restated whether its gauge was found wrong afterwards and its figures follow that
 * @param asRecorded the flow before that; null when it is as recorded or had no average
 * @param worst its worst finding
 */
public record PointRow(
        long id,
        String date,
        @Nullable String flow,
        @Nullable String random,
        @Nullable String combined,
        @Nullable String referred,
        @Nullable String ofBaseline,
        boolean baseline,
        @Nullable String line,
        @Nullable String kept,
        boolean restated,
        @Nullable String asRecorded,
        Status worst) {

    /** Whether it is on the line. */
    public boolean isIncluded() {
        return flow != null && kept == null;
    }

    /** The flow in the chart. */
    public @Nullable String plotted() {
        return referred == null ? flow : referred;
    }
}
