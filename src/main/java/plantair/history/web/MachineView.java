package plantair.history.web;

import java.util.List;
import org.jspecify.annotations.Nullable;

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
 * @param trend what its tests say
 * @param chart what the chart shows besides the tests
 * @param points its current tests, newest first
 * @param events what was done to it, newest first
 * @param baseline what its tests are compared with
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
        ChartView chart,
        List<PointRow> points,
        List<EventRow> events,
        BaselineView baseline,
        List<RecordRow> records) {

    /** A line of the register: key of its label, and its text. */
    public record Fact(String label, String text) {}

    /** A rating point as typed, and the word for its basis. */
    public record RatingRow(String pressure, String flow, String basis) {}

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
