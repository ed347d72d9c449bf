package plantair.history.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plantair.due.DueEntry;
import plantair.due.DueWords;
import plantair.web.Status;

/** What is overdue, for the head of the overview. */
@Component
final class OverdueRows {

    private static final int MOST = 6;

    private final DueWords words;

    OverdueRows(DueWords words) {
        this.words = words;
    }

    /**
     * One thing that is overdue.
     *
     * @param state as a word and a shape
     * @param what of what
     * @param page that tells of it
     * @param day since when; null when it was never done
     */
    record Row(
            Status state,
            String what,
            String page,
            @Nullable String day) {}

    /**
     * What is overdue.
     *
     * @param rows the first of them
     * @param count of all
     */
    record Overdue(List<Row> rows, int count) {}

    /** Of one site, or of all (site 0); an instrument belongs to every site. */
    Overdue of(List<DueEntry> due, long site) {
        List<DueEntry> late = due.stream()
                .filter(DueEntry::isOverdue)
                .filter(entry -> site == 0 || entry.siteId() == null || entry.siteId() == site)
                .toList();
        return new Overdue(late.stream().limit(MOST).map(this::row).toList(), late.size());
    }

    private Row row(DueEntry entry) {
        String day = entry.due() == null ? null : entry.due().toString();
        return new Row(words.state(entry), words.what(entry), entry.page(), day);
    }
}
