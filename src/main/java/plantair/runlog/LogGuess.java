package plantair.runlog;

import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plantair.quantity.PressureUnit;

/**
 * How a file of a logger is most likely to be read, for a person to look over. The rules are ours: columns where most lines
 * have two values or more, the time where a clock or a heading says so or numbers rise evenly, the pressure by its heading, else
 * the first other column of numbers.
 */
public final class LogGuess {

    private static final Pattern THREE_PARTS = Pattern.compile(".*\\d:\\d\\d:\\d\\d.*");
    private static final Pattern TIME_WORDS =
            Pattern.compile("(?i).*(time|elapsed|sec|minute|zeit|hour|\\bt\\b|^t\\s*[\\[(/]).*");
    private static final Pattern PRESSURE_WORDS =
            Pattern.compile("(?i).*(press|psi|bar\\b|kpa|mbar|kgf|druck|\\bp\\b|^p\\s*[\\[(/]).*");

    private final LogTable table;

    private LogGuess(LogTable table) {
        this.table = table;
    }

    /** The choices to propose; the unit where the file names none. */
    public static LogChoices of(LogText text, PressureUnit unit) {
        LogTable table = LogTable.of(text.lines());
        var guess = new LogGuess(table);
        int time = guess.time();
        int pressure = guess.pressure(time);
        Integer day = guess.day(time);
        return new LogChoices(
                text.code(),
                table.separator(),
                table.mark(),
                table.first(),
                false,
                day == null ? null : day + 1,
                time + 1,
                guess.format(time, day),
                pressure + 1,
                guess.unit(pressure, unit).code(),
                guess.isAbsolute(pressure) ? PressureReference.ABSOLUTE : PressureReference.GAUGE);
    }

    private int time() {
        int clock = table.firstColumn(column -> table.most(column, LogTable.CLOCK));
        int headed = table.firstColumn(column -> table.isNumbers(column)
                && TIME_WORDS.matcher(table.head(column)).matches());
        int rising = table.firstColumn(table::isRising);
        return Stream.of(clock, headed, rising)
                .filter(found -> found >= 0)
                .findFirst()
                .orElse(0);
    }

    private int pressure(int time) {
        int headed = table.firstColumn(column -> column != time
                && table.isNumbers(column)
                && PRESSURE_WORDS.matcher(table.head(column)).matches());
        int other = table.firstColumn(column -> column > time && table.isNumbers(column));
        int any = table.firstColumn(column -> column != time);
        return Stream.of(headed, other, any)
                .filter(found -> found >= 0)
                .findFirst()
                .orElse(0);
    }

    private @Nullable Integer day(int time) {
        if (!table.most(time, LogTable.CLOCK) || table.most(time, LogTable.DAY)) {
            return null;
        }
        int day = table.firstColumn(column -> column != time && table.most(column, LogTable.DAY));
        return day < 0 ? null : day;
    }

    private TimeFormat format(int time, @Nullable Integer day) {
        int dated = day == null ? time : day;
        if (table.most(dated, LogTable.DAY) && (day != null || table.most(time, LogTable.CLOCK))) {
            return dayFormat(dated);
        }
        if (table.most(time, LogTable.CLOCK)) {
            return table.most(time, THREE_PARTS) ? TimeFormat.HOURS_MINUTES_SECONDS : TimeFormat.MINUTES_SECONDS;
        }
        String head = table.head(time);
        if (head.matches(".*\\bmin.*")) {
            return TimeFormat.MINUTES;
        }
        return head.matches(".*(hour|\\[h]|\\(h\\)).*") ? TimeFormat.HOURS : TimeFormat.SECONDS;
    }

    private TimeFormat dayFormat(int column) {
        String one = table.column(column).findFirst().orElse("");
        if (one.matches("\\d{4}.*")) {
            return TimeFormat.YEAR_MONTH_DAY;
        }
        return one.matches("\\d{1,2}/.*") ? TimeFormat.MONTH_DAY_YEAR : TimeFormat.DAY_MONTH_YEAR;
    }

    private PressureUnit unit(int pressure, PressureUnit usual) {
        String said = table.head(pressure);
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
        return table.head(pressure).matches(".*(psia|\\babs|bar ?a\\b|bar ?\\(a\\)|\\(abs).*");
    }
}
