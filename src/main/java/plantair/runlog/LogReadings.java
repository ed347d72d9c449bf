package plantair.runlog;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import plantair.pumpup.TimedPressure;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureUnit;

/**
 * What a logger's file says by some choices.
 *
 * @param rows the lines that could be read
 * @param problems the first lines that could not
 * @param faulty how many could not
 * @param backwards how many are earlier than the line before
 */
public record LogReadings(List<Row> rows, List<Problem> problems, int faulty, int backwards) {

    /** So many problems are told one by one. */
    public static final int TOLD = 10;

    /** No plant of this kind has more; what does is another unit or column. */
    private static final double MOST_PA = 1e8;

    private static final int LONGEST_QUOTE = 80;
    private static final double HALF_DAY_S = 43_200;
    private static final double DAY_S = 86_400;

    /**
     * A line that was read.
     *
     * @param line its number in the file, from 1
     * @param time as it stands there
     * @param pressure as it stands there
     * @param point what it says; seconds from the first line that was read
     */
    public record Row(int line, String time, String pressure, TimedPressure point) {}

    /**
     * A line that says nothing that can be.
     *
     * @param line its number in the file, from 1
     * @param text what stands there
     * @param why what is wrong
     */
    public record Problem(int line, String text, Fault why) {}

    /** What is wrong with a line; its words are {@code log.fault.*}. */
    public enum Fault {
        /** It has not so many columns. */
        FEW_COLUMNS,
        /** No time of that format. */
        NO_TIME,
        /** No number where the pressure should stand. */
        NO_PRESSURE,
        /** Less than nothing, or more than any air receiver holds. */
        IMPOSSIBLE_PRESSURE,
        /** Earlier than the line before. */
        EARLIER
    }

    /** Reads a file. */
    public static LogReadings of(LogText text, LogChoices choices, AbsolutePressure station) {
        var reader = new Reader(choices, station);
        List<String> lines = text.lines();
        for (int i = choices.skippedLines(); i < lines.size(); i++) {
            if (!lines.get(i).isBlank()) {
                reader.read(i + 1, lines.get(i));
            }
        }
        return new LogReadings(List.copyOf(reader.rows), List.copyOf(reader.problems), reader.faulty, reader.backwards);
    }

    /** The readings alone. */
    public List<TimedPressure> points() {
        return rows.stream().map(Row::point).toList();
    }

    private static final class Reader {

        private final LogChoices choices;
        private final AbsolutePressure station;
        private final PressureUnit unit;
        private final int columns;
        private final List<Row> rows = new ArrayList<>();
        private final List<Problem> problems = new ArrayList<>();
        private int faulty;
        private int backwards;
        private double first = Double.NaN;
        private double last = Double.NEGATIVE_INFINITY;
        private double midnights;

        Reader(LogChoices choices, AbsolutePressure station) {
            this.choices = choices;
            this.station = station;
            this.unit = choices.unit();
            int day = choices.dayColumn() == null ? 0 : choices.dayColumn();
            this.columns = Math.max(Math.max(choices.timeColumn(), choices.pressureColumn()), day);
        }

        void read(int number, String line) {
            List<String> cells = choices.separator().cells(line);
            if (cells.size() < columns) {
                refuse(number, line, Fault.FEW_COLUMNS);
                return;
            }
            String time = cells.get(choices.timeColumn() - 1);
            String written = choices.dayColumn() == null ? time : cells.get(choices.dayColumn() - 1) + " " + time;
            OptionalDouble seconds = choices.timeFormat().seconds(written, choices.decimalMark());
            String pressure = cells.get(choices.pressureColumn() - 1);
            OptionalDouble value = choices.decimalMark().number(pressure);
            if (seconds.isEmpty()) {
                refuse(number, line, Fault.NO_TIME);
            } else if (value.isEmpty()) {
                refuse(number, line, Fault.NO_PRESSURE);
            } else {
                add(number, line, new String[] {written, pressure}, seconds.getAsDouble(), value.getAsDouble());
            }
        }

        private void add(int number, String line, String[] written, double seconds, double value) {
            GaugePressure gauge = choices.reference() == PressureReference.GAUGE
                    ? GaugePressure.of(value, unit)
                    : value > 0 ? AbsolutePressure.of(value, unit).gaugeAt(station) : null;
            if (gauge == null || gauge.pascals() <= -station.pascals() || gauge.pascals() > MOST_PA) {
                refuse(number, line, Fault.IMPOSSIBLE_PRESSURE);
                return;
            }
            double at = seconds + midnights;
            if (choices.timeFormat() == TimeFormat.HOURS_MINUTES_SECONDS && last - at > HALF_DAY_S) {
                midnights += DAY_S;
                at += DAY_S;
            }
            if (at < last) {
                backwards++;
                refuse(number, line, Fault.EARLIER);
            }
            first = rows.isEmpty() ? at : first;
            last = at;
            rows.add(new Row(number, written[0], written[1], new TimedPressure(at - first, gauge)));
        }

        private void refuse(int number, String line, Fault why) {
            faulty++;
            if (problems.size() < TOLD) {
                String quote = line.length() > LONGEST_QUOTE ? line.substring(0, LONGEST_QUOTE) + "…" : line;
                problems.add(new Problem(number, quote, why));
            }
        }
    }
}
