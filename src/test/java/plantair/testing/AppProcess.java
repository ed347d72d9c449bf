package plantair.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The real application in a JVM of its own, so that a test can kill it as a power switch or an administrator would. */
public final class AppProcess implements AutoCloseable {

    /** For tests in which starting is the point: all parts are made at once, as for a user. */
    public static final String[] WHOLE = {
        "--spring.main.lazy-initialization=false", "--spring.data.jpa.repositories.bootstrap-mode=default"
    };

    /** Otherwise parts are made when they are first asked for, so that a start takes about a quarter less. */
    private static final Map<String, String> LAZY =
            Map.of("SPRING_MAIN_LAZYINITIALIZATION", "true", "SPRING_DATA_JPA_REPOSITORIES_BOOTSTRAPMODE", "lazy");

    private static final Pattern READY = Pattern.compile("Plant Air Records is ready: (http://\\S+)/");
    private static final long PATIENCE_MS = 120_000;

    private final List<String> command;
    private final Path log;
    private final Map<String, String> environment;
    private Process process;
    private String baseUrl;

    private AppProcess(List<String> command, Path log, Map<String, String> environment) {
        this.command = command;
        this.log = log;
        this.environment = environment;
        this.process = launch();
        this.baseUrl = awaitReady();
    }

    /**
     * A run of the program that ended by itself.
     *
     * @param status its exit code
     * @param log what it wrote
     */
    public record Ended(int status, String log) {}

    /** Starts on an H2 file in the given directory, with the application's own settings otherwise, but for quick hashes. */
    public static AppProcess onH2File(Path directory, String... arguments) {
        return start(directory, h2Url(directory), "sa", "", arguments);
    }

    /** The same with settings in the environment, as a service manager or a container gives them. */
    public static AppProcess onH2File(Path directory, Map<String, String> environment, String... arguments) {
        return new AppProcess(command(h2Url(directory), "sa", "", arguments), log(directory), environment);
    }

    /** Runs a command on the H2 file in the given directory, in that directory, to its end. */
    public static Ended runOnH2File(Path directory, String... arguments) {
        List<String> command = command(h2Url(directory), "sa", "", arguments);
        Path log = directory.resolve("command.log");
        try {
            Process process = launch(command, log, Map.of());
            if (!process.waitFor(PATIENCE_MS, TimeUnit.MILLISECONDS)) {
                process.destroyForcibly();
                throw new AssertionError("The command did not end; it wrote:\n" + Files.readString(log));
            }
            return new Ended(process.exitValue(), Files.readString(log));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String h2Url(Path directory) {
        return "jdbc:h2:durable:" + directory.resolve("plant-air").toAbsolutePath()
                + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH"
                + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE;QUERY_CACHE_SIZE=256";
    }

    /** Starts on the PostgreSQL server of this test run; several may run at the same time. */
    public static AppProcess onPostgres(Path directory, String... arguments) {
        PostgresServer server = PostgresServer.ofThisRun();
        return start(directory, server.jdbcUrl(), server.username(), server.password(), arguments);
    }

    /** Starts on a PostgreSQL database of its own, as one that is restored. */
    public static AppProcess onDatabase(Path directory, String url, String user, String... arguments) {
        return start(directory, url, user, "", arguments);
    }

    private static AppProcess start(Path directory, String url, String user, String password, String... arguments) {
        return new AppProcess(command(url, user, password, arguments), log(directory), Map.of());
    }

    private static Path log(Path directory) {
        return directory.resolve("application.log");
    }

    /** The arguments come first: a command is the first of them. */
    private static List<String> command(String url, String user, String password, String... arguments) {
        List<String> command = new ArrayList<>(QuickStart.command());
        command.addAll(List.of(arguments));
        command.addAll(List.of(
                "--server.address=127.0.0.1",
                "--server.port=0",
                "--" + People.QUICK_HASH,
                "--spring.datasource.url=" + url,
                "--spring.datasource.username=" + user,
                "--spring.datasource.password=" + password));
        return List.copyOf(command);
    }

    /** Ends the process at once (SIGKILL where the system has it): no shutdown hook runs, nothing is flushed. */
    public void killHard() {
        process.destroyForcibly();
        awaitEnd();
    }

    /**
     * Asks the process to end in good order (SIGTERM where the system has it).
     *
     * @return its exit code
     */
    public int stop() {
        askToStop();
        awaitEnd();
        return process.exitValue();
    }

    /** Asks, and does not wait. */
    public void askToStop() {
        process.destroy();
    }

    /** Starts again on the same database; the port may be another one. */
    public void restart() {
        killHard();
        process = launch();
        baseUrl = awaitReady();
    }

    /** Address without a slash at the end. */
    public String baseUrl() {
        return baseUrl;
    }

    /** What the application wrote since its last start. */
    public String log() {
        try {
            return Files.exists(log) ? Files.readString(log) : "";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        killHard();
    }

    private Process launch() {
        return launch(command, log, environment);
    }

    private static Process launch(List<String> command, Path log, Map<String, String> environment) {
        try {
            var builder = new ProcessBuilder(command);
            builder.environment().putAll(LAZY);
            builder.environment().putAll(environment);
            Process started = builder.directory(log.getParent().toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(log.toFile())
                    .start();
            Runtime.getRuntime().addShutdownHook(new Thread(started::destroyForcibly));
            return started;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String awaitReady() {
        long deadline = System.nanoTime() + PATIENCE_MS * 1_000_000;
        while (process.isAlive() && System.nanoTime() < deadline) {
            Matcher ready = READY.matcher(log());
            if (ready.find()) {
                return ready.group(1);
            }
            pause();
        }
        killHard();
        throw new AssertionError("The application did not start; it wrote:\n" + log());
    }

    private void awaitEnd() {
        try {
            process.waitFor();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void pause() {
        try {
            Thread.sleep(50);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
