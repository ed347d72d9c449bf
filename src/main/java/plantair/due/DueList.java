package plantair.due;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.ClassPathResource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Service;
import plantair.register.Changes;
import plantair.register.KeptUntilChange;

/**
 * Everything that is due some day, from the records as they are now. One question to the database, however much there is;
 * while nobody changes anything, one for the end of the chain of changes.
 */
@Service
public class DueList {

    private static final int SOON_DAYS = 30;
    private static final String SQL = read();

    private final JdbcTemplate jdbc;
    private final Clock clock;
    private final KeptUntilChange<List<DueEntry>> entries;

    DueList(JdbcTemplate jdbc, Changes changes, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
        entries = new KeptUntilChange<>(changes, clock, this::make);
    }

    private static String read() {
        try {
            return new ClassPathResource("due/entries.sql").getContentAsString(StandardCharsets.UTF_8);
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    /** All of it, overdue first. */
    public List<DueEntry> all() {
        return entries.get();
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
