package plantair.transfer;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import plantair.instances.OneAtATime;

/** The table of uploads, which every instance shows. One that is under way while nobody holds the lock broke off. */
@Component
class ImportJobs {

    /** Held by the instance that works them off. */
    static final String LOCK = "imports";

    private static final int KEPT = 20;
    private static final String DEAD = "stage in ('CHECKING', 'RECORDING') and not " + OneAtATime.isBeingDone(LOCK);
    private static final String SELECT = "select id, name, case when " + DEAD
            + " then 'BROKEN_OFF' else stage end, progress, findings, recorded, ordered_by from import_job ";
    private static final String NEXT =
            SELECT + "where stage in ('WAITING', 'ORDERED') order by created_at, id fetch first 1 rows only";
    private static final String OLD = "select id from import_job"
            + " where stage in ('CHECKED', 'DONE', 'FAILED', 'BROKEN_OFF') order by created_at desc, id offset " + KEPT
            + " rows";

    /** One that broke off while it was looked through is looked through again. */
    private static final String ORDER = "update import_job set ordered_by = ?, progress = 0,"
            + " stage = case when sound then 'ORDERED' else 'WAITING' end"
            + " where id = ? and (stage = 'CHECKED' and sound or stage = 'BROKEN_OFF' or " + DEAD + ")";

    private final JdbcTemplate jdbc;

    ImportJobs(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    void add(UUID id, String name, Instant now) {
        jdbc.update(
                "insert into import_job (id, name, stage, progress, sound, recorded, created_at)"
                        + " values (?, ?, 'WAITING', 0, false, 0, ?)",
                id,
                name,
                now.atOffset(ZoneOffset.UTC));
    }

    Optional<Import> find(UUID id) {
        return jdbc.query(SELECT + "where id = ?", ImportJobs::read, id).stream()
                .findFirst();
    }

    /** The one that waits longest. */
    Optional<Import> next() {
        return jdbc.query(NEXT, ImportJobs::read).stream().findFirst();
    }

    private static Import read(ResultSet row, int number) throws SQLException {
        String findings = row.getString(5);
        return new Import(
                row.getObject(1, UUID.class),
                row.getString(2),
                Import.Stage.valueOf(row.getString(3)),
                row.getLong(4),
                findings == null ? null : StoredFindings.read(findings),
                row.getLong(6),
                row.getString(7));
    }

    /** Begins the next stage of one that waits. */
    void begin(UUID id) {
        jdbc.update(
                "update import_job set stage = case when stage = 'WAITING' then 'CHECKING' else 'RECORDING' end,"
                        + " progress = 0 where id = ? and stage in ('WAITING', 'ORDERED')",
                id);
    }

    /** Told at once, whatever becomes of the transaction that is under way. */
    @Transactional(propagation = Propagation.REQUIRES_NEW)
    public void progress(UUID id, long done) {
        jdbc.update("update import_job set progress = ? where id = ?", done, id);
    }

    void checked(UUID id, Findings found) {
        jdbc.update(
                "update import_job set stage = 'CHECKED', findings = ?, sound = ? where id = ? and stage = 'CHECKING'",
                StoredFindings.write(found),
                found.problems().isEmpty(),
                id);
    }

    /** Says that it be taken in; false when it is not waiting for that. */
    boolean order(UUID id, String by) {
        return jdbc.update(ORDER, by, id) == 1;
    }

    /**
     * All of it is in the records: in the transaction that puts it there, so that both are true or neither.
     *
     * @throws IllegalStateException when it was given to another instance meanwhile
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void done(UUID id, long tests) {
        int rows = jdbc.update(
                "update import_job set stage = 'DONE', recorded = ? where id = ? and stage = 'RECORDING'", tests, id);
        if (rows != 1) {
            throw new IllegalStateException("import " + id + " was given up");
        }
    }

    void failed(UUID id) {
        jdbc.update("update import_job set stage = 'FAILED' where id = ? and stage in ('CHECKING', 'RECORDING')", id);
    }

    /** To be called by who holds the lock: what is under way still, nobody is at. */
    void breakOff() {
        jdbc.update("update import_job set stage = 'BROKEN_OFF' where stage in ('CHECKING', 'RECORDING')");
    }

    /** Removes all but the last ones that need no work. */
    List<UUID> removeOld() {
        List<UUID> old = jdbc.query(OLD, (row, number) -> row.getObject(1, UUID.class));
        old.forEach(id -> jdbc.update("delete from import_job where id = ?", id));
        return old;
    }
}
