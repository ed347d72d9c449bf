package plantair.instances;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Files that came in and wait for the next step, in pieces in the database, so that any instance can take it. */
@Component
public class SharedFiles {

    /** Half of what H2 takes in a column. */
    private static final int PIECE = 512 * 1024;

    private static final String NEXT = "select bytes from shared_piece where file_id = ? and position = ?";

    private final JdbcTemplate jdbc;
    private final OneAtATime locks;
    private final Clock clock;

    SharedFiles(JdbcTemplate jdbc, OneAtATime locks, Clock clock) {
        this.jdbc = jdbc;
        this.locks = locks;
        this.clock = clock;
    }

    /** Keeps a copy of a file for so long. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void keep(UUID id, Path file, Duration length) throws IOException {
        jdbc.update(
                "insert into shared_file (id, keep_until) values (?, ?)",
                id,
                clock.instant().plus(length).atOffset(ZoneOffset.UTC));
        try (InputStream in = Files.newInputStream(file)) {
            int position = 0;
            for (byte[] piece = in.readNBytes(PIECE); piece.length > 0; piece = in.readNBytes(PIECE)) {
                jdbc.update(
                        "insert into shared_piece (file_id, position, bytes) values (?, ?, ?)", id, position, piece);
                position++;
            }
        }
    }

    /** A copy of the file on this machine, the caller's to delete; empty when it is kept no more. */
    public Optional<Path> fetch(UUID id) {
        try {
            Path file = Files.createTempFile("plant-air", ".shared");
            if (write(id, file)) {
                return Optional.of(file);
            }
            Files.delete(file);
            return Optional.empty();
        } catch (IOException full) {
            throw new UncheckedIOException(full);
        }
    }

    private boolean write(UUID id, Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            int position = 0;
            List<byte[]> piece = piece(id, position);
            while (!piece.isEmpty()) {
                out.write(piece.get(0));
                position++;
                piece = piece(id, position);
            }
        }
        return !jdbc.queryForList("select 1 from shared_file where id = ?", id).isEmpty();
    }

    private List<byte[]> piece(UUID id, int position) {
        return jdbc.query(NEXT, (row, number) -> row.getBytes(1), id, position);
    }

    /** It is needed no more. */
    public void forget(UUID id) {
        jdbc.update("delete from shared_file where id = ?", id);
    }

    /** Takes away what was not fetched in time. */
    @Scheduled(initialDelayString = "PT10M", fixedDelayString = "PT1H")
    void expire() {
        locks.tryTo(
                "old shared files",
                () -> jdbc.update(
                        "delete from shared_file where keep_until < ?",
                        clock.instant().atOffset(ZoneOffset.UTC)));
    }
}
