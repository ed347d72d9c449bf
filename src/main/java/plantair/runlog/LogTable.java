package plantair.runlog;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The first lines of a logger's file as columns, parted where most cells are values; for {@link LogGuess}. */
final class LogTable {

    static final Pattern CLOCK = Pattern.compile(".*\\d:\\d\\d.*");
    static final Pattern DAY = Pattern.compile("(\\d{1,4})[-./]\\d{1,2}[-./]\\d{1,4}.*");

    private static final int LOOKED_AT = 60;

    private final List<String> lines;
    private Separator separator = Separator.COMMA;
    private DecimalMark mark = DecimalMark.POINT;
    private int first;
    private List<List<String>> data = List.of();
    private List<String> heading = List.of();

    private LogTable(List<String> lines) {
        this.lines = lines;
    }

    static LogTable of(List<String> lines) {
        var table = new LogTable(lines);
        table.layout();
        return table;
    }

    Separator separator() {
        return separator;
    }

    DecimalMark mark() {
        return mark;
    }

    /** Lines before the first with two values. */
    int first() {
        return first;
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

    Stream<String> column(int index) {
        return data.stream().filter(row -> row.size() > index).map(row -> row.get(index));
    }

    boolean most(int column, Pattern pattern) {
        return most(column, cell -> pattern.matcher(cell).matches());
    }

    /** Nine of ten: gaps that the logger wrote itself do not hide what a column holds. */
    private boolean most(int column, Predicate<String> such) {
        long cells = column(column).count();
        return cells > 0 && 10 * column(column).filter(such).count() >= 9 * cells;
    }

    /** What stands over a column, in small letters. */
    String head(int column) {
        return heading.size() > column ? heading.get(column).toLowerCase(Locale.ROOT) : "";
    }

    boolean isNumbers(int column) {
        return most(column, cell -> mark.number(cell).isPresent());
    }

    /** The first column such as this, from 0; -1 when there is none. */
    int firstColumn(IntPredicate such) {
        return IntStream.range(0, columns()).filter(such).findFirst().orElse(-1);
    }

    boolean isRising(int column) {
        List<Double> numbers = new ArrayList<>();
        column(column).forEach(cell -> mark.number(cell).ifPresent(numbers::add));
        return numbers.size() > 1
                && isNumbers(column)
                && IntStream.range(1, numbers.size()).allMatch(i -> numbers.get(i) > numbers.get(i - 1));
    }
}
