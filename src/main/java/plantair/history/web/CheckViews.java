package plantair.history.web;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import plantair.history.Check;
import plantair.history.CheckLists;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.TestPagePart;
import plantair.web.UnitSet;

/** What to look at when output is down, in words, for the fragment {@code compressors/_checks}. */
@Component
final class CheckViews implements TestPagePart {

    static final String ATTRIBUTE = "checks";

    private final CheckLists lists;
    private final MessageSource messages;

    CheckViews(CheckLists lists, MessageSource messages) {
        this.lists = lists;
        this.messages = messages;
    }

    /**
     * A line of the list.
     *
     * @param what to look at
     * @param why it is on the list
     * @param caution where it can hurt; null where it cannot
     */
    public record Line(String what, String why, @Nullable String caution) {}

    /** For the page of a machine; empty while its output is not down. */
    List<Line> ofMachine(long compressorId) {
        return lines(lists.ofMachine(compressorId));
    }

    @Override
    public String attribute() {
        return ATTRIBUTE;
    }

    /** For the page of a test; empty when it shows no loss. */
    @Override
    public List<Line> of(PumpUpTest test, UnitSet units) {
        return lines(lists.ofTest(test.compressor().id(), test.id()));
    }

    private List<Line> lines(List<Check> checks) {
        Locale locale = LocaleContextHolder.getLocale();
        return checks.stream()
                .map(check -> new Line(
                        messages.getMessage("history.check." + check.item(), null, locale),
                        messages.getMessage("history.check.why." + check.reason(), null, locale),
                        messages.getMessage("history.check." + check.item() + ".caution", null, null, locale)))
                .toList();
    }
}
