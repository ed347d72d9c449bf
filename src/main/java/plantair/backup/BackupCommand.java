package plantair.backup;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import org.h2.api.ErrorCode;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** {@code backup [--to=DIR]}: opens the H2 file itself, or asks the program that has it open. */
final class BackupCommand {

    private static final Logger LOG = LoggerFactory.getLogger(BackupCommand.class);
    private static final long PAUSE_MS = 200;
    private static final int PAUSES_UNTIL_TAKEN = 150;

    private final DatabaseSettings settings;
    private final Path directory;

    BackupCommand(DatabaseSettings settings, Path directory) {
        this.settings = settings;
        this.directory = directory.toAbsolutePath().normalize();
    }

    /**
     * Makes the backup.
     *
     * @param to folder to put it in, if not that of the settings
     * @return the file
     */
    Path run(Optional<Path> to) throws IOException, InterruptedException {
        settings.requireFile();
        Path made = alone(to.orElse(directory)).orElse(null);
        if (made == null) {
            made = asked();
            made = to.isPresent() ? BackupFolder.copy(made, to.get()) : made;
        }
        LOG.info("Backup made: {}", made);
        return made;
    }

    /** Empty when another program has the database open. */
    private Optional<Path> alone(Path folder) throws IOException {
        if (!settings.exists()) {
            throw new BackupFailed("There is no database " + settings.url() + " yet");
        }
        try (var connection = DriverManager.getConnection(settings.url(), settings.user(), settings.password())) {
            var backups = new BackupFolder(folder);
            var file = backups.add(BackupKind.BY_HAND, Clock.systemUTC().instant(), part -> {
                try {
                    DatabaseScript.write(connection, part);
                } catch (SQLException failed) {
                    throw new BackupFailed("The database could not be read", failed);
                }
            });
            return Optional.of(backups.path(file));
        } catch (SQLException failed) {
            if (failed.getErrorCode() == ErrorCode.DATABASE_ALREADY_OPEN_1) {
                return Optional.empty();
            }
            throw new BackupFailed("The database could not be opened", failed);
        }
    }

    private Path asked() throws IOException, InterruptedException {
        var requests = new Requests(directory);
        String id = UUID.randomUUID().toString();
        requests.leave(id);
        int pauses = 0;
        while (!requests.isAnswered(id)) {
            if (requests.isWaiting(id) && pauses++ > PAUSES_UNTIL_TAKEN) {
                requests.withdraw(id);
                throw new BackupFailed("Another program has the database open and takes no request in " + directory
                        + ". Is its plantair.backup.directory the same?");
            }
            Thread.sleep(PAUSE_MS);
        }
        String name = requests.answered(id);
        if (name.isEmpty()) {
            throw new BackupFailed("The running program could not make it: its page of backups and its log say why");
        }
        return directory.resolve(name);
    }
}
