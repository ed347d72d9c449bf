package plantair.register;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;

/** The time zones of things that stand at a site; a test keeps the zone of the day it was made. */
@Component
public class SiteZones {

    private final JdbcTemplate jdbc;

    SiteZones(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** Zones by id; what belongs to no site, as an instrument, has none. */
    public Map<Long, ZoneId> of(ChangeKind kind, Collection<Long> ids) {
        String from = from(kind);
        Map<Long, ZoneId> zones = new HashMap<>();
        if (from != null && !ids.isEmpty()) {
            jdbc.query(
                    "select t." + kind.key() + ", " + from + " where t." + kind.key() + " in ("
                            + String.join(", ", Collections.nCopies(ids.size(), "?")) + ")",
                    row -> {
                        long id = row.getLong(1);
                        zone(row.getString(2)).ifPresent(zone -> zones.put(id, zone));
                    },
                    ids.toArray());
        }
        return zones;
    }

    private static @Nullable String from(ChangeKind kind) {
        String table = kind.table() + " t";
        return switch (kind) {
            case SITE, TEST, READINGS, LEAK_TEST, FOUND_LEAK -> "t.zone from " + table;
            case COMPRESSOR, RECEIVER, PIPE, LIMITS, INTERVAL, DEMAND_ITEM, SUPPLY_CHOICE, OFFER ->
                "s.zone from " + table + " join site s on s.id = t.site_id";
            case EVENT, BASELINE ->
                "s.zone from " + table + " join compressor c on c.id = t.compressor_id join site s on s.id = c.site_id";
            case VALVE, CERTIFICATE, INSPECTION, FINDING ->
                "s.zone from " + table + " join receiver r on r.id = t.receiver_id join site s on s.id = r.site_id";
            case VALVE_TEST ->
                "s.zone from " + table + " join relief_valve v on v.id = t.valve_id"
                        + " join receiver r on r.id = v.receiver_id join site s on s.id = r.site_id";
            case REVIEW, LOGGED_RUN -> "p.zone from " + table + " join pump_up_test p on p.id = t.test_id";
            case INSTRUMENT, CALIBRATION, RESTATEMENT, ATTACHMENT, ACCOUNT -> null;
        };
    }

    private static Optional<ZoneId> zone(String id) {
        try {
            return Optional.of(ZoneId.of(id));
        } catch (DateTimeException writtenByHand) {
            return Optional.empty();
        }
    }
}
