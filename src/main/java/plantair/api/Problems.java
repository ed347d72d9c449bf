package plantair.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.context.MessageSource;

/** Collects what is wrong with a request: the first problem of each field, up to a hundred fields. */
final class Problems {

    private static final int MOST = 100;
    private static final int LONGEST_QUOTE = 60;

    private final MessageSource messages;
    private final Locale locale;
    private final List<FieldProblem> found = new ArrayList<>();

    Problems(MessageSource messages, Locale locale) {
        this.messages = messages;
        this.locale = locale;
    }

    void add(String field, String code, Object... args) {
        String path = cut(field);
        boolean known = found.stream().anyMatch(problem -> problem.field().equals(path));
        if (!known && found.size() < MOST) {
            found.add(new FieldProblem(path, code, messages.getMessage(code, args, locale)));
        }
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    List<FieldProblem> all() {
        return List.copyOf(found);
    }

    /** A text as sent, cut so that a message stays readable. */
    static String cut(String sent) {
        return sent.length() <= LONGEST_QUOTE ? sent : sent.substring(0, LONGEST_QUOTE) + "…";
    }
}
