package plantair.backup;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import javax.sql.DataSource;
import org.h2.store.fs.FileUtils;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Service;
import plantair.web.DiskFull;

/** Makes backups of the running installation and lists them. */
@Service
public class Backups {

    private static final Logger LOG = LoggerFactory.getLogger(Backups.class);

    /**
     * A backup that was not made.
     *
     * @param at when it was tried
     * @param diskFull whether there was no room
     */
    public record Failure(Instant at, boolean diskFull) {}

    private final DataSource database;
    private final BackupFolder folder;
    private final Clock clock;
    private final String url;
    private volatile @Nullable Failure failure;

    Backups(DataSource database, @Value("${plantair.backup.directory:./data/backups}") Path directory, Clock clock) {
        this.database = database;
        this.folder = new BackupFolder(directory);
        this.clock = clock;
        this.url = url(database);
    }

    /** Whether the program makes the backups; PostgreSQL makes its own. */
    public boolean areOurs() {
        return url.startsWith("jdbc:h2:");
    }

    /** Whether the records are in a file, which is worth a backup a day. */
    boolean areOfFile() {
        return areOurs() && !url.startsWith("jdbc:h2:mem:");
    }

    /** Room on the disk of the H2 file; empty where the records are elsewhere. */
    public OptionalLong freeBytes() {
        if (!areOfFile()) {
            return OptionalLong.empty();
        }
        String file = new DatabaseSettings(url, "", "").file();
        var onDisk = new File(FileUtils.toRealPath(file).replaceFirst("^durable:", ""));
        return OptionalLong.of(onDisk.getParentFile().getUsableSpace());
    }

    private static String url(DataSource database) {
        try (var connection = database.getConnection()) {
            return connection.getMetaData().getURL();
        } catch (SQLException failed) {
            throw new BackupFailed("The database cannot be reached", failed);
        }
    }

    /**
     * Makes one, while people may go on writing.
     *
     * @throws BackupFailed when it could not be made; then nothing of it is left
     */
    public synchronized BackupFile make(BackupKind kind) {
        Instant now = clock.instant();
        try {
            BackupFile made = folder.add(kind, now, this::write);
            failure = null;
            LOG.info("Backup made: {}, {} bytes", folder.path(made), made.bytes());
            return made;
        } catch (IOException | RuntimeException failed) {
            failure = new Failure(now, DiskFull.isCauseOf(failed));
            LOG.error("No backup was made in {}", folder.path(), failed);
            throw new BackupFailed("No backup was made: " + failed.getMessage(), failed);
        }
    }

    private void write(Path file) {
        try (var connection = database.getConnection()) {
            if (!DatabaseScript.isH2(connection)) {
                throw new BackupFailed("PostgreSQL is backed up by pg_dump");
            }
            DatabaseScript.write(connection, file);
        } catch (SQLException failed) {
            throw new BackupFailed("The database could not be read", failed);
        }
    }

    /** The last attempt when it failed. */
    public Optional<Failure> failure() {
        return Optional.ofNullable(failure);
    }

    /** The finished ones, newest first. */
    public List<BackupFile> list() throws IOException {
        return folder.list();
    }

    /** The file of a finished one, to be read. */
    public Optional<Path> file(String name) throws IOException {
        return folder.find(name).map(folder::path);
    }

    /** Where they are. */
    public Path folder() {
        return folder.path();
    }

    /** Takes away what the retention does not keep. */
    void expire(Retention retention) {
        try {
            for (BackupFile old : retention.expired(folder.list())) {
                folder.remove(old);
                LOG.info("Backup removed, too old: {}", old.name());
            }
        } catch (IOException failed) {
            LOG.error("Old backups were not removed from {}", folder.path(), failed);
        }
    }
}
