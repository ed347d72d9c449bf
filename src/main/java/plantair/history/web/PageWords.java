package plantair.history.web;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import plantair.quantity.Rounded;

/** Sentences of a compressor's page, and the few kinds of number in them. */
@Component
final class PageWords {

    /** The words of all pages are English, whatever a browser asks for. */
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM uuuu", Locale.ENGLISH);

    private final MessageSource messages;

    PageWords(MessageSource messages) {
        this.messages = messages;
    }

    String say(String key, @Nullable Object... args) {
        return messages.getMessage(key, args, LocaleContextHolder.getLocale());
    }

    /** A month; empty for no day. */
    static String month(@Nullable LocalDate day) {
        return day == null ? "" : MONTH.format(day);
    }

    /** A percentage without a known uncertainty: one decimal, two where it is that small. */
    static String percent(double value) {
        return Rounded.places(value, Math.abs(value) < 0.1 ? 2 : 1);
    }
}
