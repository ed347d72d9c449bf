package plantair.leaktest.web;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.UUID;
import java.util.function.ToDoubleFunction;
import plantair.pumpup.PossibleRange;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.DurationUnit;
import plantair.quantity.Elapsed;
import plantair.quantity.Entered;
import plantair.quantity.FixedUnit;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureUnit;
import plantair.register.Submission;
import plantair.web.EnteredField;

/**
 * Reads what the forms of leaks have in common.
 *
 * @param sent the form
 */
record LeakTyping(Submission sent) {

    private static final int CLOCK_SLACK_S = 300;
    private static final int EARLIEST_YEAR = 1950;

    /** The mark that the form carries, so that a form sent twice counts once. */
    Optional<UUID> submission(String typed) {
        try {
            return Optional.of(UUID.fromString(typed));
        } catch (IllegalArgumentException notMadeByTheForm) {
            sent.reject("submission", "event.submission");
            return Optional.empty();
        }
    }

    /** A moment that is not to come, from the fields {@code date} and {@code time}. */
    Optional<Instant> moment(String date, String time, ZoneId zone, Instant now) {
        Optional<LocalDate> day = sent.checks().date("date", date, true);
        Optional<LocalTime> clock = sent.checks().time("time", time, true);
        if (day.isEmpty() || clock.isEmpty()) {
            return Optional.empty();
        }
        Instant at = day.get().atTime(clock.get()).atZone(zone).toInstant();
        if (at.isAfter(now.plusSeconds(CLOCK_SLACK_S))) {
            sent.reject("date", "test.future", date + " " + time);
            return Optional.empty();
        }
        return Optional.of(at);
    }

    /** A day that is not to come. */
    Optional<LocalDate> past(String path, String typed, LocalDate today) {
        Optional<LocalDate> day = sent.checks().date(path, typed, true);
        if (day.isPresent() && day.get().isAfter(today)) {
            sent.reject(path, "event.happenedOn.future");
        } else if (day.isPresent() && day.get().getYear() < EARLIEST_YEAR) {
            sent.reject(path, "event.happenedOn.early");
        }
        return day;
    }

    /** A gauge pressure that can be true. */
    Optional<Entered> gauge(String path, EnteredField field, boolean required) {
        var checks = sent.checks();
        return possible(
                path,
                required
                        ? checks.required(path, field, PressureUnit.class)
                        : checks.optional(path, field, PressureUnit.class),
                PossibleRange.GAUGE_PRESSURE,
                typed -> GaugePressure.of(typed).pascals());
    }

    /** A barometer reading, or none. */
    Optional<Entered> barometer(String path, EnteredField field) {
        return possible(
                path,
                sent.checks().optional(path, field, PressureUnit.class),
                PossibleRange.BAROMETER,
                typed -> AbsolutePressure.of(typed).pascals());
    }

    /** A time above zero and up to a day. */
    Optional<Entered> time(String path, EnteredField field, boolean required) {
        var checks = sent.checks();
        return possible(
                path,
                checks.positive(
                        path,
                        required
                                ? checks.required(path, field, DurationUnit.class)
                                : checks.optional(path, field, DurationUnit.class)),
                PossibleRange.ELAPSED,
                typed -> Elapsed.of(typed).seconds());
    }

    /** A time from zero up to a day, or none. */
    Optional<Entered> timeOrZero(String path, EnteredField field, boolean required) {
        var checks = sent.checks();
        Optional<Entered> typed = required
                ? checks.required(path, field, DurationUnit.class)
                : checks.optional(path, field, DurationUnit.class);
        return typed.filter(zero -> zero.value() == 0)
                .or(() -> possible(
                        path,
                        typed,
                        PossibleRange.ELAPSED,
                        time -> Elapsed.of(time).seconds()));
    }

    /** A percentage above zero, up to 100. */
    Optional<Entered> percent(String path, EnteredField field) {
        var checks = sent.checks();
        Optional<Entered> percent = checks.positive(path, checks.required(path, field, FixedUnit.PERCENT));
        boolean tooMuch = percent.isPresent() && percent.get().part() > 1;
        if (tooMuch) {
            sent.reject(path + ".number", "test.percent", percent.get().toString());
        }
        return percent.filter(typed -> !tooMuch);
    }

    /** What lies in a range; else it is rejected beside its field. */
    Optional<Entered> possible(
            String path, Optional<Entered> typed, PossibleRange range, ToDoubleFunction<Entered> si) {
        if (typed.isPresent() && !isPossible(typed.get(), range, si)) {
            sent.reject(path + ".number", "range." + range.name(), typed.get().toString());
            return Optional.empty();
        }
        return typed;
    }

    /** Quantities refuse what no gauge can show, such as a vacuum below none. */
    static boolean isPossible(Entered typed, PossibleRange range, ToDoubleFunction<Entered> si) {
        try {
            return range.contains(si.applyAsDouble(typed));
        } catch (IllegalArgumentException impossible) {
            return false;
        }
    }
}
