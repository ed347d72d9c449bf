package plantair.history.web;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the chart shows besides the tests; each part is a table on the page too.
 *
 * @param summary what the chart shows, for who cannot see it
 * @param line the fitted line
 * @param levels the baseline and the limits
 */
public record ChartView(String summary, List<LineRow> line, List<LevelRow> levels) {

    /** Whether the line is continued beyond the last test. */
    public boolean isForecast() {
        return line.stream().anyMatch(LineRow::forecast);
    }

    /** Whether a limit has a date. */
    public boolean isDated() {
        return levels.stream().anyMatch(level -> level.wider() != null);
    }

    /**
     * The line on a day.
     *
     * @param date the day
     * @param piece number of the piece between two steps
     * @param forecast whether it lies beyond the last test
     * @param flow on the line
     * @param low lower end of the 95 % interval
     * @param high upper end
     */
    public record LineRow(String date, int piece, boolean forecast, Shown flow, Shown low, Shown high) {}

    /** A number as a reader needs it, and with more digits for drawing. */
    public record Shown(String text, String drawn) {}

    /**
     * The baseline or a limit.
     *
     * @param code which
     * @param word what it is called
     * @param percent of the baseline
     * @param flow there
     * @param forecast when the line gets there; null where nothing can be said, and for the baseline
     * @param wider the same at 95 %; null where there is nothing more to say
     */
    public record LevelRow(
            String code,
            String word,
            int percent,
            Shown flow,
            @Nullable String forecast,
            @Nullable String wider) {}
}
