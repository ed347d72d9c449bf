package plantair.demand.web;

import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** Sentences of the pages of supply and demand. */
@Component
final class Words {

    private final MessageSource messages;

    Words(MessageSource messages) {
        this.messages = messages;
    }

    String say(String key, @Nullable Object... args) {
        return messages.getMessage(key, args, LocaleContextHolder.getLocale());
    }
}
