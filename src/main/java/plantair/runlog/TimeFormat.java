package plantair.runlog;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How a logger writes times. */
public enum TimeFormat {
    /** 12.5. */
    SECONDS(1),
    /** 0.2083. */
    MINUTES(60),
    /** 0.00347. */
    HOURS(3600),
    /** 1:02.5; minutes go on after 59. */
    MINUTES_SECONDS(0),
    /** 14:01:02.5 or 2:01:02 PM. */
    HOURS_MINUTES_SECONDS(0),
    /** 2026-06-15 14:01:02 or 2026-06-15T14:01:02Z. */
    YEAR_MONTH_DAY(0),
    /** 15.06.2026 14:01:02. */
    DAY_MONTH_YEAR(0),
    /** 6/15/2026 2:01:02 PM. */
    MONTH_DAY_YEAR(0);

    private static final int DAY_S = 86_400;
    private static final int CENTURY = 2000;
    private static final int LONGEST = 60;
    private static final Pattern CLOCK = Pattern.compile(
            "(\\d{1,4}):(\\d{1,2})(?::(\\d{1,2}))?(?:[.,](\\d{1,9}))? ?(AM|PM|am|pm|a\\.m\\.|p\\.m\\.)?");
    private static final Pattern MOMENT =
            Pattern.compile("(\\d{1,4})[-./](\\d{1,2})[-./](\\d{1,4})[T ]+([^Z+]*?)(Z|[+-]\\d\\d:?\\d\\d)?");

    private final int unitS;

    TimeFormat(int unitS) {
        this.unitS = unitS;
    }

    /** True when a day belongs to it, which may stand in a column of its own. */
    public boolean hasDay() {
        return this == YEAR_MONTH_DAY || this == DAY_MONTH_YEAR || this == MONTH_DAY_YEAR;
    }

    /** Seconds from some moment that is the same for the whole file; empty when the text is no such time. */
    OptionalDouble seconds(String text, DecimalMark mark) {
        if (text.length() > LONGEST) {
            return OptionalDouble.empty();
        }
        if (unitS > 0) {
            OptionalDouble number = mark.number(text);
            return number.isPresent() ? OptionalDouble.of(unitS * number.getAsDouble()) : number;
        }
        return hasDay() ? moment(text) : clock(text, this == MINUTES_SECONDS);
    }

    private static OptionalDouble clock(String text, boolean minutesFirst) {
        Matcher parts = CLOCK.matcher(text);
        if (!parts.matches() || minutesFirst && parts.group(3) != null) {
            return OptionalDouble.empty();
        }
        int first = Integer.parseInt(parts.group(1));
        int second = Integer.parseInt(parts.group(2));
        int third = parts.group(3) == null ? 0 : Integer.parseInt(parts.group(3));
        double fraction = parts.group(4) == null ? 0 : Double.parseDouble("0." + parts.group(4));
        if (second > 59 || third > 59) {
            return OptionalDouble.empty();
        }
        if (minutesFirst) {
            return OptionalDouble.of(60.0 * first + second + fraction);
        }
        String half = parts.group(5);
        if (half != null) {
            boolean afternoon = half.charAt(0) == 'p' || half.charAt(0) == 'P';
            first = first % 12 + (afternoon ? 12 : 0);
        }
        return OptionalDouble.of(3600.0 * first + 60.0 * second + third + fraction);
    }

    private OptionalDouble moment(String text) {
        Matcher parts = MOMENT.matcher(text);
        if (!parts.matches()) {
            return OptionalDouble.empty();
        }
        OptionalDouble time = clock(parts.group(4).strip(), false);
        try {
            double day = (double) day(parts).toEpochDay() * DAY_S;
            int east =
                    parts.group(5) == null ? 0 : ZoneOffset.of(parts.group(5)).getTotalSeconds();
            return time.isPresent() ? OptionalDouble.of(day + time.getAsDouble() - east) : time;
        } catch (DateTimeException none) {
            return OptionalDouble.empty();
        }
    }

    private LocalDate day(Matcher parts) {
        int one = Integer.parseInt(parts.group(1));
        int two = Integer.parseInt(parts.group(2));
        int three = Integer.parseInt(parts.group(3));
        return switch (this) {
            case DAY_MONTH_YEAR -> LocalDate.of(year(three), two, one);
            case MONTH_DAY_YEAR -> LocalDate.of(year(three), one, two);
            default -> LocalDate.of(year(one), two, three);
        };
    }

    private static int year(int written) {
        return written < 100 ? CENTURY + written : written;
    }
}
