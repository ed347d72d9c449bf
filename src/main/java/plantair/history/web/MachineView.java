package plantair.history.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.web.Status;

/**
 * A compressor's page, all text ready.
 *
 * @param id of the compressor
 * @param tag how the plant calls it
 * @param site its site
 * @param retired no longer in service
 * @param note free text, may be empty
 * @param plate what the register says, as typed
 * @param ratings the maker's points, as typed
 * @param trend the line through its tests
 * @param points its current tests, newest first
 * @param records all tests ever recorded, newest first
 */
public record MachineView(
        long id,
        String tag,
        String site,
        boolean retired,
        String note,
        List<Fact> plate,
        List<RatingRow> ratings,
        TrendView trend,
        List<PointRow> points,
        List<RecordRow> records) {

    /** A line of the register: key of its label, and its text. */
    public record Fact(String label, String text) {}

    /** A rating point as typed, and the word for its basis. */
    public record RatingRow(String pressure, String flow, String basis) {}

    /**
     * What the line says.
     *
     * @param count tests on it
     * @param direction word and shape
     * @param explained key of the sentence that explains the word
     * @param change percent a year ± standard uncertainty; null without a line
     * @param low lower end of the 95 % interval; null without a line
     * @param high upper end of the 95 % interval; null without a line
     * @param scatters whether tests scatter more than their stated uncertainty
     * @param baseline the baseline test; null when there is none
     */
    public record TrendView(
            int count,
            Status direction,
            String explained,
            @Nullable String change,
            @Nullable String low,
            @Nullable String high,
            boolean scatters,
            @Nullable Baseline baseline) {}

    /** The baseline test: its id and day. */
    public record Baseline(long id, String date) {}

    /**
     * A current test in chart and table.
     *
     * @param id of the test
     * @param date its day
     * @param flow free air delivered for comparison; null when the runs were not averaged
     * @param random standard uncertainty from what differs between tests; null with {@code flow}
     * @param combined standard uncertainty with everything in it; null with {@code flow}
     * @param ofBaseline percent of baseline ± its standard uncertainty; null where there is no comparison
     * @param baseline whether it is the baseline
     * @param line flow on the line at that day; null without a line
     * @param drawn the same with more digits, so that the drawn line has no kinks; null without a line
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
            @Nullable String ofBaseline,
            boolean baseline,
            @Nullable String line,
            @Nullable String drawn,
            @Nullable String kept,
            boolean restated,
            @Nullable String asRecorded,
            Status worst) {

        /** Whether it is on the line. */
        public boolean isIncluded() {
            return flow != null && kept == null;
        }
    }

    /**
     * A test as recorded.
     *
     * @param id of the test
     * @param performed date and time where it was made
     * @param tester who made it
     * @param recorded date and time, in the zone of the test
     * @param recordedBy who recorded it
     * @param supersedes the test it corrects; null when it is the first
     * @param reason why it corrects that; null when it is the first
     * @param supersededBy the test that corrects it; null while it is current
     * @param supersededReason why; null while it is current
     */
    public record RecordRow(
            long id,
            String performed,
            String tester,
            String recorded,
            String recordedBy,
            @Nullable Long supersedes,
            @Nullable String reason,
            @Nullable Long supersededBy,
            @Nullable String supersededReason) {}
}
