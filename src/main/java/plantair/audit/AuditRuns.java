package plantair.audit;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import plantair.instances.OneAtATime;
import tools.jackson.databind.json.JsonMapper;

/** The table of the last check, which every instance shows. */
@Component
class AuditRuns {

    /** Held by the instance that checks. */
    static final String LOCK = "audit";

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final String LAST = "select started_at, ended_at, size, done, report, "
            + OneAtATime.isBeingDone(LOCK) + " from audit_run order by started_at desc fetch first 1 rows only";

    private final JdbcTemplate jdbc;

    AuditRuns(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** Puts a new check in the place of the last one. */
    @Transactional
    public UUID begin(Instant now, long size) {
        UUID id = UUID.randomUUID();
        jdbc.update("delete from audit_run");
        jdbc.update(
                "insert into audit_run (id, started_at, size, done) values (?, ?, ?, 0)",
                id,
                now.atOffset(ZoneOffset.UTC),
                size);
        return id;
    }

    /** Told at once, outside of the view that the check has of the database. */
    @Transactional(propagation = Propagation.REQUIRES_NEW)
    public void progress(UUID id, long done) {
        jdbc.update("update audit_run set done = ? where id = ?", done, id);
    }

    void end(UUID id, Instant now, @Nullable AuditReport report) {
        jdbc.update(
                "update audit_run set ended_at = ?, report = ? where id = ?",
                now.atOffset(ZoneOffset.UTC),
                report == null ? null : JSON.writeValueAsString(report),
                id);
    }

    Optional<AuditJob.State> last() {
        return jdbc.query(LAST, AuditRuns::read).stream().findFirst();
    }

    private static AuditJob.State read(ResultSet row, int number) throws SQLException {
        OffsetDateTime ended = row.getObject(2, OffsetDateTime.class);
        String report = row.getString(5);
        return new AuditJob.State(
                row.getObject(1, OffsetDateTime.class).toInstant(),
                ended == null ? null : ended.toInstant(),
                row.getLong(3),
                row.getLong(4),
                ended == null && row.getBoolean(6),
                report == null ? null : JSON.readValue(report, AuditReport.class));
    }
}
