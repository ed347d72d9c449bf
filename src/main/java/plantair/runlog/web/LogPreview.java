package plantair.runlog.web;

import java.util.List;
import java.util.stream.IntStream;
import plantair.runlog.LogReadings;
import plantair.runlog.LogText;
import plantair.runlog.Separator;
import plantair.web.Choice;
import plantair.web.QuantityFormat;

/**
 * The first lines of a file as a table, and what the choices make of it.
 *
 * @param columns its columns, by what stands over the readings
 * @param rows first lines
 * @param lines how many it has
 * @param read what was read; empty while the choices cannot be used
 */
record LogPreview(List<Choice> columns, List<Row> rows, int lines, List<Read> read) {

    private static final int SHOWN = 12;
    private static final int MOST_COLUMNS = 30;
    private static final int LONGEST_CELL = 40;

    /** A line: number, cells, and whether readings have begun. */
    record Row(int line, boolean skipped, List<String> cells) {}

    /** What was read, ready for the page. */
    record Read(int readings, int faulty, boolean rises, RiseView rise, List<LogReadings.Problem> problems) {

        /** How many problems are not told one by one. */
        public int more() {
            return faulty - problems.size();
        }
    }

    static LogPreview of(LogText text, Separator separator, int skipped) {
        int from = Math.max(0, Math.min(skipped - 3, text.lines().size() - SHOWN));
        List<String> lines = text.lines();
        List<Row> rows = IntStream.range(from, Math.min(lines.size(), from + SHOWN))
                .mapToObj(i -> new Row(i + 1, i < skipped, cells(lines.get(i), separator)))
                .toList();
        int most = rows.stream().mapToInt(row -> row.cells().size()).max().orElse(1);
        List<String> heading = skipped > 0 && skipped <= lines.size()
                ? separator == Separator.BLANKS ? List.of() : cells(lines.get(skipped - 1), separator)
                : List.of();
        List<Choice> columns = IntStream.range(0, most)
                .mapToObj(i -> new Choice(
                        String.valueOf(i + 1),
                        i < heading.size() && !heading.get(i).isEmpty()
                                ? (i + 1) + ": " + heading.get(i)
                                : String.valueOf(i + 1)))
                .toList();
        return new LogPreview(columns, rows, lines.size(), List.of());
    }

    private static List<String> cells(String line, Separator separator) {
        return separator.cells(line).stream()
                .limit(MOST_COLUMNS)
                .map(cell -> cell.length() > LONGEST_CELL ? cell.substring(0, LONGEST_CELL) + "…" : cell)
                .toList();
    }

    LogPreview with(LogReadings readings, QuantityFormat format) {
        RiseView rise = RiseView.of(readings.points(), format);
        return new LogPreview(
                columns,
                rows,
                lines,
                List.of(new Read(
                        readings.rows().size(), readings.faulty(), rise.points() > 0, rise, readings.problems())));
    }
}
