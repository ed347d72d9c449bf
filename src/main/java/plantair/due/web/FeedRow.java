package plantair.due.web;

import java.time.LocalDate;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;
import plantair.due.CalendarFeed;

/**
 * A calendar address of the own account; its secret is not known any more.
 *
 * @param id its id
 * @param madeOn day in UTC
 * @param site the one site that it tells of; null for all
 */
record FeedRow(long id, LocalDate madeOn, @Nullable String site) {

    static FeedRow of(CalendarFeed feed) {
        return new FeedRow(
                feed.id(),
                feed.madeAt().atZone(ZoneOffset.UTC).toLocalDate(),
                feed.site() == null ? null : feed.site().name());
    }
}
