package plantair.web;

import java.util.List;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;

/** Choice lists of enums, with their words from the messages. */
@Component
public final class Choices {

    private final MessageSource messages;

    Choices(MessageSource messages) {
        this.messages = messages;
    }

    /** Every constant, in order; the label of constant C is message {@code prefix.C}. */
    public <E extends Enum<E>> List<Choice> of(String prefix, Class<E> type) {
        return Stream.of(type.getEnumConstants())
                .map(constant -> new Choice(constant.name(), label(prefix, constant)))
                .toList();
    }

    /** The word for one constant. */
    public String label(String prefix, Enum<?> constant) {
        String key = prefix + "." + constant.name();
        return messages.getMessage(key, null, LocaleContextHolder.getLocale());
    }
}
