package plantair.backup;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.DefaultApplicationArguments;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.WebApplicationType;
import org.springframework.core.env.Environment;

/** The commands {@code backup} and {@code restore}; they need the settings, not the whole program. */
public final class BackupCommands {

    private static final Logger LOG = LoggerFactory.getLogger(BackupCommands.class);
    private static final String BACKUP = "backup";
    private static final String RESTORE = "restore";

    private BackupCommands() {}

    /** Whether the program was started for one of them. */
    public static boolean isOne(String... args) {
        return args.length > 0 && List.of(BACKUP, RESTORE).contains(args[0]);
    }

    /**
     * Runs one.
     *
     * @return the exit code, 0 when it was done
     */
    public static int run(String... args) {
        var settings = new SpringApplication(BackupCommands.class);
        settings.setWebApplicationType(WebApplicationType.NONE);
        settings.setLogStartupInfo(false);
        try (var context = settings.run(args)) {
            return run(context.getEnvironment(), args);
        }
    }

    private static int run(Environment environment, String... args) {
        var arguments = new DefaultApplicationArguments(args);
        List<String> words = arguments.getNonOptionArgs();
        try {
            var database = DatabaseSettings.of(environment);
            if (words.get(0).equals(RESTORE)) {
                new RestoreCommand(database).run(Path.of(operand(words)));
            } else {
                String directory = environment.getProperty("plantair.backup.directory", "./data/backups");
                new BackupCommand(database, Path.of(directory)).run(option(arguments, "to"));
            }
            return 0;
        } catch (BackupFailed | IOException failed) {
            LOG.error("Not done. {}", failed.getMessage(), failed.getCause());
            return 1;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return 1;
        }
    }

    private static Optional<Path> option(DefaultApplicationArguments arguments, String name) {
        var values = arguments.getOptionValues(name);
        return values == null || values.isEmpty() ? Optional.empty() : Optional.of(Path.of(values.get(0)));
    }

    private static String operand(List<String> words) {
        if (words.size() != 2) {
            throw new BackupFailed("Say which file: restore FILE");
        }
        return words.get(1);
    }
}
