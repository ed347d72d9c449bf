package plantair.due;

import java.util.Locale;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import plantair.web.Status;
import plantair.web.Status.Kind;

/** What is due, in words. */
@Component
public class DueWords {

    private final MessageSource messages;

    DueWords(MessageSource messages) {
        this.messages = messages;
    }

    /** How near it is, as a word and a shape. */
    public Status state(DueEntry entry) {
        Kind kind = switch (entry.state()) {
            case OVERDUE -> Kind.ALARM;
            case NEVER -> entry.isOverdue() ? Kind.ALARM : Kind.WATCH;
            case SOON -> Kind.WATCH;
            case LATER -> Kind.GOOD;
            case NO_INTERVAL -> Kind.NONE;
        };
        return new Status(kind, say("due.state." + entry.state()));
    }

    /** What is to be done, of what: {@code R-1, RV-1: test of the relief valve}. */
    public String what(DueEntry entry) {
        return say("due.what", entry.name(), kind(entry.kind()));
    }

    /** One line of a calendar. */
    public String summary(DueEntry entry) {
        String what = what(entry);
        String placed = entry.site() == null ? what : say("due.at", what, entry.site());
        return entry.state() == DueState.OVERDUE ? say("due.overdue", placed) : placed;
    }

    /** Name of a calendar; of no site when the name is empty. */
    public String calendar(String site) {
        return site.isEmpty() ? say("calendar.name") : say("calendar.name.site", site);
    }

    /** What is to be done. */
    public String kind(DueKind kind) {
        return say("due.kind." + kind);
    }

    /** Where its day comes from. */
    public String rule(DueEntry entry) {
        if (entry.months() == null) {
            return say(entry.due() == null ? "due.rule.none" : "due.rule.stated");
        }
        return say(entry.isUsual() ? "due.rule.usual" : "due.rule.months", entry.months());
    }

    private String say(String key, Object... args) {
        Locale locale = LocaleContextHolder.getLocale();
        return messages.getMessage(key, args, locale);
    }
}
