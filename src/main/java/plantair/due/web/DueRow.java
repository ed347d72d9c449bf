package plantair.due.web;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import plantair.due.DueEntry;
import plantair.due.DueWords;
import plantair.web.Status;

/**
 * One line of the due list.
 *
 * @param name of the thing
 * @param page that tells of it
 * @param kind what is to be done
 * @param site its site; null for an instrument
 * @param state how near it is
 * @param due its day; null where none can be told
 * @param last when it was done last; null when no record tells
 * @param rule where the day comes from
 */
record DueRow(
        String name,
        String page,
        String kind,
        @Nullable String site,
        Status state,
        @Nullable LocalDate due,
        @Nullable LocalDate last,
        String rule) {

    static DueRow of(DueEntry entry, DueWords words) {
        return new DueRow(
                entry.name(),
                entry.page(),
                words.kind(entry.kind()),
                entry.site(),
                words.state(entry),
                entry.due(),
                entry.last(),
                words.rule(entry));
    }
}
