package plantair.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import org.h2.store.fs.FileUtils;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * {@code restore FILE}: makes a new H2 file from a backup. It overwrites nothing: where a database is, it refuses. The new
 * file has its name only once it is whole.
 */
final class RestoreCommand {

    private static final Logger LOG = LoggerFactory.getLogger(RestoreCommand.class);
    private static final String UNFINISHED = "-restoring";

    private final DatabaseSettings settings;

    RestoreCommand(DatabaseSettings settings) {
        this.settings = settings;
    }

    void run(Path backup) throws IOException {
        settings.requireFile();
        if (settings.exists()) {
            throw new BackupFailed("There is a database already, and nothing is overwritten: " + settings.file()
                    + ". Move it away first, or set spring.datasource.url to a new file.");
        }
        check(backup);
        DatabaseSettings unfinished = settings.beside(UNFINISHED);
        FileUtils.delete(unfinished.file());
        FileUtils.createDirectories(FileUtils.getParent(settings.file()));
        fill(unfinished, backup);
        FileUtils.move(unfinished.file(), settings.file());
        LOG.info("Restored {} from {}. Start the program as usual.", settings.file(), backup);
    }

    private static void check(Path backup) throws IOException {
        if (!Files.isRegularFile(backup)) {
            throw new BackupFailed("There is no file " + backup);
        }
        String said = Checksum.said(backup);
        if (said.isEmpty()) {
            throw new BackupFailed("The file with its sum is missing: " + Checksum.besides(backup));
        }
        if (!said.equals(Checksum.of(backup))) {
            throw new BackupFailed("The backup is damaged, its sum differs from " + Checksum.besides(backup));
        }
    }

    private static void fill(DatabaseSettings unfinished, Path backup) {
        try (var connection = DriverManager.getConnection(unfinished.url(), unfinished.user(), unfinished.password())) {
            DatabaseScript.read(connection, backup);
            try (var statement = connection.createStatement()) {
                statement.execute("shutdown");
            }
        } catch (SQLException failed) {
            FileUtils.tryDelete(unfinished.file());
            throw new BackupFailed("The backup could not be read into a new database", failed);
        }
    }
}
