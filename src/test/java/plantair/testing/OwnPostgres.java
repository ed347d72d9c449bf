package plantair.testing;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A PostgreSQL server of one test, which may be killed and started again on its data. */
public final class OwnPostgres implements AutoCloseable {

    private static final int TRIES = 20;
    private static final long PAUSE_MS = 500;

    private final Path data;
    private EmbeddedPostgres server;

    private OwnPostgres(Path data) throws IOException {
        this.data = data;
        this.server = builder().start();
    }

    public static OwnPostgres start(Path data) throws IOException {
        return new OwnPostgres(data);
    }

    /** The embedded server's own settings trade safety for speed, and would lose what was acknowledged. */
    private EmbeddedPostgres.Builder builder() {
        return EmbeddedPostgres.builder()
                .setDataDirectory(data)
                .setCleanDataDirectory(false)
                .setServerConfig("fsync", "on")
                .setServerConfig("synchronous_commit", "on")
                .setServerConfig("full_page_writes", "on");
    }

    public String jdbcUrl() {
        return server.getJdbcUrl("postgres", "postgres");
    }

    public String user() {
        return "postgres";
    }

    /** Ends the server at once (SIGKILL); its children see it and end by themselves. */
    public void killHard() throws IOException {
        long pid = Long.parseLong(
                Files.readAllLines(data.resolve("postmaster.pid")).get(0).trim());
        ProcessHandle process = ProcessHandle.of(pid).orElseThrow();
        process.destroyForcibly();
        process.onExit().join();
    }

    /** Starts it on the same data and port; until the children have ended it refuses, so more than once. */
    public void startAgain() throws InterruptedException {
        int port = server.getPort();
        close();
        for (int attempt = 1; ; attempt++) {
            try {
                server = builder().setPort(port).start();
                return;
            } catch (IOException | IllegalStateException refused) {
                if (attempt == TRIES) {
                    throw new AssertionError("The server did not start again", refused);
                }
                Thread.sleep(PAUSE_MS);
            }
        }
    }

    @Override
    public void close() {
        try {
            server.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
