package plantair.runlog;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plantair.quantity.PressureUnit;

/**
 * How a file of a logger is most likely to be read, for a person to look over. The rules are ours: columns where most lines
 * have two values or more, the time where a clock or a heading says so or numbers rise evenly, the pressure by its heading, else
 * the first other column of numbers.
 */
public final class LogGuess {

    private static final int LOOKED_AT = 60;
    private static final Pattern CLOCK = Pattern.compile(".*\\d:\\d\\d.*");
    private static final Pattern THREE_PARTS = Pattern.compile(".*\\d:\\d\\d:\\d\\d.*");
    private static final Pattern DAY = Pattern.compile("(\\d{1,4})[-./]\\d{1,2}[-./]\\d{1,4}.*");
    private static final Pattern TIME_WORDS =
            Pattern.compile("(?i).*(time|elapsed|sec|minute|zeit|hour|\\bt\\b|^t\\s*[\\[(/]).*");
    private static final Pattern PRESSURE_WORDS =
            Pattern.compile("(?i).*(press|psi|bar\\b|kpa|mbar|kgf|druck|\\bp\\b|^p\\s*[\\[(/]).*");

    private final List<String> lines;
    private Separator separator = Separator.COMMA;
    private DecimalMark mark = DecimalMark.POINT;
    private int first;
    private List<List<String>> data = List.of();
    private List<String> heading = List.of();

    private LogGuess(List<String> lines) {
        this.lines = lines;
    }

    /** The choices to propose; the unit where the file names none. */
    public static LogChoices of(LogText text, PressureUnit unit) {
        var guess = new LogGuess(text.lines());
        guess.layout();
        int time = guess.time();
        int pressure = guess.pressure(time);
        Integer day = guess.day(time);
        return new LogChoices(
                text.code(),
                guess.separator,
                guess.mark,
                guess.first,
                false,
                day == null ? null : day + 1,
                time + 1,
                guess.format(time, day),
                pressure + 1,
                guess.unit(pressure, unit).code(),
                guess.isAbsolute(pressure) ? PressureReference.ABSOLUTE : PressureReference.GAUGE);
    }

    private void layout() {
        long best = -1;
        for (Separator candidate : List.of(Separator.TAB, Separator.SEMICOLON, Separator.COMMA, Separator.BLANKS)) {
            for (DecimalMark decimal : DecimalMark.values()) {
                boolean clash = candidate == Separator.COMMA && decimal == DecimalMark.COMMA;
                long found = clash ? -1 : weight(candidate, decimal);
                if (found > best) {
                    best = found;
                    separator = candidate;
                    mark = decimal;
                }
            }
        }
        first = firstOfReadings();
        data = cells(lines.subList(first, lines.size()));
        heading = lines.subList(0, first).stream()
                .filter(line -> !line.isBlank())
                .reduce((earlier, later) -> later)
                .map(separator::cells)
                .orElse(List.of());
    }

    /** How many values there are in lines with two or more. */
    private long weight(Separator candidate, DecimalMark decimal) {
        return sample().stream()
                .mapToLong(line -> candidate.cells(line).stream()
                        .filter(cell -> isValue(cell, decimal))
                        .count())
                .filter(values -> values >= 2)
                .sum();
    }

    private List<String> sample() {
        return lines.stream()
                .filter(line -> !line.isBlank())
                .limit(2L * LOOKED_AT)
                .toList();
    }

    private static boolean isValue(String cell, DecimalMark decimal) {
        return decimal.number(cell).isPresent()
                || CLOCK.matcher(cell).matches()
                || DAY.matcher(cell).matches();
    }

    private int firstOfReadings() {
        return IntStream.range(0, Math.min(lines.size(), LOOKED_AT))
                .filter(i -> separator.cells(lines.get(i)).stream()
                                .filter(cell -> isValue(cell, mark))
                                .count()
                        >= 2)
                .findFirst()
                .orElse(0);
    }

    private List<List<String>> cells(List<String> some) {
        return some.stream()
                .filter(line -> !line.isBlank())
                .limit(LOOKED_AT)
                .map(separator::cells)
                .toList();
    }

    private int columns() {
        return data.stream().mapToInt(List::size).max().orElse(1);
    }

    private Stream<String> column(int index) {
        return data.stream().filter(row -> row.size() > index).map(row -> row.get(index));
    }

    private boolean most(int column, Pattern pattern) {
        return most(column, cell -> pattern.matcher(cell).matches());
    }

    /** Nine of ten: gaps that the logger wrote itself do not hide what a column holds. */
    private boolean most(int column, Predicate<String> such) {
        long cells = column(column).count();
        return cells > 0 && 10 * column(column).filter(such).count() >= 9 * cells;
    }

    private boolean isHeaded(int column, Pattern words) {
        return heading.size() > column && words.matcher(heading.get(column)).matches();
    }

    private boolean isNumbers(int column) {
        return most(column, cell -> mark.number(cell).isPresent());
    }

    private int firstColumn(IntPredicate such) {
        return IntStream.range(0, columns()).filter(such).findFirst().orElse(-1);
    }

    private int time() {
        int clock = firstColumn(column -> most(column, CLOCK));
        int headed = firstColumn(column -> isNumbers(column) && isHeaded(column, TIME_WORDS));
        int rising = firstColumn(this::isRising);
        return Stream.of(clock, headed, rising)
                .filter(found -> found >= 0)
                .findFirst()
                .orElse(0);
    }

    private boolean isRising(int column) {
        List<Double> numbers = new ArrayList<>();
        column(column).forEach(cell -> mark.number(cell).ifPresent(numbers::add));
        return numbers.size() > 1
                && isNumbers(column)
                && IntStream.range(1, numbers.size()).allMatch(i -> numbers.get(i) > numbers.get(i - 1));
    }

    private int pressure(int time) {
        int headed = firstColumn(column -> column != time && isNumbers(column) && isHeaded(column, PRESSURE_WORDS));
        int other = firstColumn(column -> column > time && isNumbers(column));
        int any = firstColumn(column -> column != time);
        return Stream.of(headed, other, any)
                .filter(found -> found >= 0)
                .findFirst()
                .orElse(0);
    }

    private @Nullable Integer day(int time) {
        if (!most(time, CLOCK) || most(time, DAY)) {
            return null;
        }
        int day = firstColumn(column -> column != time && most(column, DAY));
        return day < 0 ? null : day;
    }

    private TimeFormat format(int time, @Nullable Integer day) {
        int dated = day == null ? time : day;
        if (most(dated, DAY) && (day != null || most(time, CLOCK))) {
            return dayFormat(dated);
        }
        if (most(time, CLOCK)) {
            return most(time, THREE_PARTS) ? TimeFormat.HOURS_MINUTES_SECONDS : TimeFormat.MINUTES_SECONDS;
        }
        String head = heading.size() > time ? heading.get(time).toLowerCase(Locale.ROOT) : "";
        if (head.matches(".*\\bmin.*")) {
            return TimeFormat.MINUTES;
        }
        return head.matches(".*(hour|\\[h]|\\(h\\)).*") ? TimeFormat.HOURS : TimeFormat.SECONDS;
    }

    private TimeFormat dayFormat(int column) {
        String one = column(column).findFirst().orElse("");
        if (one.matches("\\d{4}.*")) {
            return TimeFormat.YEAR_MONTH_DAY;
        }
        return one.matches("\\d{1,2}/.*") ? TimeFormat.MONTH_DAY_YEAR : TimeFormat.DAY_MONTH_YEAR;
    }

    private PressureUnit unit(int pressure, PressureUnit usual) {
        String said = said(pressure);
        if (said.contains("psi")) {
            return PressureUnit.PSI;
        }
        if (said.contains("kpa")) {
            return PressureUnit.KPA;
        }
        if (said.contains("kgf") || said.contains("kg/cm")) {
            return PressureUnit.KGF_CM2;
        }
        if (said.contains("mbar") || said.contains("hpa")) {
            return PressureUnit.HPA;
        }
        return said.matches(".*\\bbar.*") || said.matches(".*_bar.*") ? PressureUnit.BAR : usual;
    }

    private boolean isAbsolute(int pressure) {
        return said(pressure).matches(".*(psia|\\babs|bar ?a\\b|bar ?\\(a\\)|\\(abs).*");
    }

    private String said(int column) {
        return heading.size() > column ? heading.get(column).toLowerCase(Locale.ROOT) : "";
    }
}
