package plantair.due;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.ClassPathResource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Service;
import plantair.register.ChainEnd;
import plantair.register.Changes;

/**
 * Everything that is due some day, from the records as they are now. One question to the database, however much there is;
 * while nobody changes anything, one for the end of the chain of changes.
 */
@Service
public class DueList {

    private static final int SOON_DAYS = 30;
    private static final String SQL = read();

    /** Days begin at full quarters of an hour of UTC, wherever that is. */
    private static final Duration DAY_BEGINS_EVERY = Duration.ofMinutes(15);

    private final JdbcTemplate jdbc;
    private final Changes changes;
    private final Clock clock;
    private volatile @Nullable Made newest;

    DueList(JdbcTemplate jdbc, Changes changes, Clock clock) {
        this.jdbc = jdbc;
        this.changes = changes;
        this.clock = clock;
    }

    /** A list, and the end of the chain and the quarter of an hour up to which it is as good as one made now. */
    private record Made(ChainEnd end, long quarter, List<DueEntry> entries) {}

    private static String read() {
        try {
            return new ClassPathResource("due/entries.sql").getContentAsString(StandardCharsets.UTF_8);
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    /** All of it, overdue first. */
    public List<DueEntry> all() {
        // the end of the chain first: a change that comes before the list is read makes the next one anew
        ChainEnd end = changes.end().orElse(null);
        long quarter = Math.floorDiv(clock.instant().getEpochSecond(), DAY_BEGINS_EVERY.toSeconds());
        Made known = newest;
        if (known == null || !known.end().equals(end) || known.quarter() != quarter) {
            List<DueEntry> entries = make();
            newest = end == null ? null : new Made(end, quarter, entries);
            return entries;
        }
        return known.entries();
    }

    private List<DueEntry> make() {
        return jdbc.query(SQL, (row, number) -> entry(row)).stream()
                .sorted(DueEntry.ORDER)
                .toList();
    }

    private DueEntry entry(ResultSet row) throws SQLException {
        DueKind kind = DueKind.valueOf(row.getString("kind"));
        // an instrument that is carried between sites has the day of UTC
        String zoneId = row.getString("zone");
        ZoneId zone = zoneId == null ? clock.getZone() : ZoneId.of(zoneId);
        boolean isUsual = row.getObject("interval_id") == null && kind.usualMonths() != null;
        Integer months = isUsual ? kind.usualMonths() : row.getObject("months", Integer.class);
        LocalDate stated = row.getObject("stated", LocalDate.class);
        LocalDate last = last(row, zone);
        LocalDate due = stated != null || last == null || months == null ? stated : last.plusMonths(months);
        boolean wanted = months != null || kind == DueKind.CERTIFICATE;
        return new DueEntry(
                kind,
                row.getLong("object_id"),
                row.getLong("page_id"),
                row.getString("name"),
                row.getObject("site_id", Long.class),
                row.getString("site"),
                last,
                due,
                state(due, wanted, LocalDate.now(clock.withZone(zone))),
                stated == null ? months : null,
                isUsual);
    }

    private static @Nullable LocalDate last(ResultSet row, ZoneId zone) throws SQLException {
        OffsetDateTime moment = row.getObject("last_at", OffsetDateTime.class);
        return moment == null
                ? row.getObject("last_on", LocalDate.class)
                : moment.atZoneSameInstant(zone).toLocalDate();
    }

    private static DueState state(@Nullable LocalDate due, boolean wanted, LocalDate today) {
        if (due == null) {
            return wanted ? DueState.NEVER : DueState.NO_INTERVAL;
        }
        if (due.isBefore(today)) {
            return DueState.OVERDUE;
        }
        return due.isAfter(today.plusDays(SOON_DAYS)) ? DueState.LATER : DueState.SOON;
    }
}
