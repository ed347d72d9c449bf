package plantair.runlog;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import plantair.attachment.ReceivedFile;
import plantair.instances.SharedFiles;

/** Files of loggers that came in and wait until it is said how they are read; for half a day, on every instance. */
@Component
public class WaitingLogs {

    /** As long as a session may last. */
    private static final Duration KEPT = Duration.ofHours(12);

    private final JdbcTemplate jdbc;
    private final SharedFiles files;

    WaitingLogs(JdbcTemplate jdbc, SharedFiles files) {
        this.jdbc = jdbc;
        this.files = files;
    }

    /**
     * A file that waits.
     *
     * @param id its key
     * @param fileName fit to be shown
     * @param file a copy of it, here
     */
    public record Waiting(UUID id, String fileName, ReceivedFile file) implements AutoCloseable {

        @Override
        public void close() throws IOException {
            file.close();
        }
    }

    /**
     * Keeps a file for a while.
     *
     * @param testId the test it was sent to
     * @param by who sent it, and alone sees it until it is recorded
     * @return its key
     */
    @Transactional(rollbackFor = IOException.class)
    public UUID keep(long testId, String by, String fileName, ReceivedFile file) throws IOException {
        UUID id = UUID.randomUUID();
        files.keep(id, file.path(), KEPT);
        jdbc.update(
                "insert into waiting_log (id, test_id, sent_by, file_name, sha256, byte_count) values (?, ?, ?, ?, ?, ?)",
                id,
                testId,
                by,
                fileName,
                file.sha256(),
                file.size());
        return id;
    }

    /** What is known of a file that waits. */
    private record Row(String fileName, String sha256, long size) {

        static Row read(ResultSet row, int number) throws SQLException {
            return new Row(row.getString(1), row.getString(2), row.getLong(3));
        }

        Waiting with(UUID id, Path copy) {
            return new Waiting(id, fileName, new ReceivedFile(copy, sha256, size));
        }
    }

    /** The file that somebody sent to a test; empty when it is here no more. */
    public Optional<Waiting> find(UUID id, long testId, String by) {
        return jdbc
                .query(
                        "select file_name, sha256, byte_count from waiting_log"
                                + " where id = ? and test_id = ? and sent_by = ?",
                        Row::read,
                        id,
                        testId,
                        by)
                .stream()
                .findFirst()
                .flatMap(row -> files.fetch(id).map(copy -> row.with(id, copy)));
    }
}
