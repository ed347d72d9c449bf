package plantair.history.web;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import plantair.history.NextStep;
import plantair.history.StateDetail.Dot;
import plantair.quantity.Rounded;
import plantair.trend.Standing;
import plantair.web.Status;
import plantair.web.Status.Kind;

/** Words and shapes for where a machine stands, and for what to do next. */
@Component
final class StateWords {

    private final MessageSource messages;
    private final Clock clock;

    StateWords(MessageSource messages, Clock clock) {
        this.messages = messages;
        this.clock = clock;
    }

    Status standing(Standing standing) {
        Kind kind = switch (standing) {
            case OK -> Kind.GOOD;
            case REPEAT, WATCH, PLAN -> Kind.WATCH;
            case ACT -> Kind.ALARM;
            case NOT_KNOWN, CANNOT_BE_TOLD -> Kind.NONE;
        };
        return new Status(kind, say("history.standing." + standing));
    }

    /** For a machine that was never tested. */
    String first() {
        return say("history.next.FIRST_TEST");
    }

    /** For a machine with nothing to do, whose site wants no interval between tests. */
    String nothing() {
        return say("history.next.NOTHING");
    }

    /**
     * What to do next.
     *
     * @param day that belongs to it; null where it has none
     * @param zone where the machine stands
     */
    String next(NextStep step, @Nullable LocalDate day, ZoneId zone) {
        String key = "history.next." + step;
        if (day == null) {
            return say(key);
        }
        boolean past = step != NextStep.TEST_AFTER_EVENT && !day.isAfter(LocalDate.now(clock.withZone(zone)));
        return say(past ? key + ".past" : key, step == NextStep.PLAN_REBUILD ? season(day, zone) : day.toString());
    }

    /** Some tests as percent of baseline. */
    String told(List<Dot> tests) {
        return say(
                "history.line.told",
                tests.stream()
                        .map(test -> test.joins() ? percent(test) : say("history.line.leftOut", percent(test)))
                        .collect(Collectors.joining(", ")));
    }

    private static String percent(Dot test) {
        return Rounded.places(100 * test.part(), 0);
    }

    private String season(LocalDate day, ZoneId zone) {
        Season season = Season.of(day, zone);
        return say("history.season." + season.name(), season.years());
    }

    private String say(String key, Object... args) {
        Locale locale = LocaleContextHolder.getLocale();
        return messages.getMessage(key, args, locale);
    }
}
