package plantair.runlog.web;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Flow against pressure of a test, as ready text.
 *
 * @param atTest the flow of the test itself, with its uncertainty; empty when its runs were not averaged
 * @param testPressure the pressure that belongs to it
 * @param sources the fills that it is told from
 * @param answers flow at each pressure of the rating, and at the one that was asked for
 * @param chart what the chart is drawn from; null when there is nothing to draw
 */
public record CurveView(
        String atTest,
        String testPressure,
        List<Source> sources,
        List<Answer> answers,
        @Nullable Chart chart) {

    /**
     * A fill with many readings.
     *
     * @param name run or file
     * @param logId number of the logged run; null for laps
     * @param rise its rise
     * @param notes what is odd about it
     */
    public record Source(String name, @Nullable Long logId, RiseView rise, List<Note> notes) {}

    /**
     * What is odd, and what to do.
     *
     * @param code its code
     * @param stop whether no flow can be told
     * @param text in words
     */
    public record Note(String code, boolean stop, String text) {}

    /**
     * Flow at one pressure.
     *
     * @param pressure where
     * @param rated the flow that the maker states there; empty for a pressure that was asked for
     * @param best the figure to go by, carried from the test; empty when there is none
     * @param from by which fill it was carried
     * @param ofRating percent of the rating, no sharper than it is known; empty when that cannot be told
     * @param verdict whether it meets its rating; empty when that cannot be asked
     * @param lines what each fill says
     */
    public record Answer(
            String pressure,
            String rated,
            String best,
            String from,
            String ofRating,
            String verdict,
            List<Line> lines) {}

    /**
     * What one fill says of a pressure.
     *
     * @param name run or file
     * @param window the readings that it comes from; empty when no flow can be told
     * @param byHand level by hand
     * @param freeAir level with the air temperature; empty where that was not read
     * @param parts what makes it unsure, largest first
     * @param carried the flow of the test carried there; empty when it cannot be
     * @param notes what is odd
     */
    public record Line(
            String name,
            String window,
            String byHand,
            String freeAir,
            List<Part> parts,
            String carried,
            List<Note> notes) {}

    /** A part of the uncertainty. */
    public record Part(String name, String percent) {}

    /**
     * The chart and its table.
     *
     * @param carried whether its flows are those of the test carried along, else levels
     * @param pressureUnit sign of gauge pressure
     * @param flowUnit sign of flow
     * @param rows one a fill and pressure
     * @param marks the test itself, and what the maker states
     */
    public record Chart(boolean carried, String pressureUnit, String flowUnit, List<Row> rows, List<Mark> marks) {}

    /** A row; numbers in the units of the chart, as they stand in the table. */
    public record Row(String name, String pressure, String flow, String u, String level, String levelU) {}

    /** A single point: TEST or RATING; without a flow it is a pressure alone. */
    public record Mark(String kind, String word, String pressure, String flow, String u) {}
}
