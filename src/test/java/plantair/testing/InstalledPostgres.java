package plantair.testing;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A PostgreSQL installed on this machine with its programs, which the embedded one comes without. */
public record InstalledPostgres(Path programs) {

    private static final Path DEBIAN = Path.of("/usr/lib/postgresql");
    private static final List<String> NEEDED =
            List.of("initdb", "pg_ctl", "postgres", "pg_dump", "pg_restore", "createdb");

    /** The newest one; empty when there is none. */
    public static Optional<InstalledPostgres> find() {
        if (!Files.isDirectory(DEBIAN)) {
            return Optional.empty();
        }
        try (Stream<Path> versions = Files.list(DEBIAN)) {
            return versions.map(version -> version.resolve("bin"))
                    .filter(bin -> NEEDED.stream().allMatch(program -> Files.isExecutable(bin.resolve(program))))
                    .max(Comparator.comparing(Path::toString))
                    .map(InstalledPostgres::new);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Starts a server of its own on a free port. */
    public Server start(Path data) throws IOException, InterruptedException {
        var server = new Server(programs, data, freePort());
        server.run("initdb --pgdata=" + data + " --username=postgres --auth=trust --encoding=UTF8 --locale=C");
        server.run(List.of(
                "pg_ctl",
                "start",
                "--wait",
                "--pgdata=" + data,
                "--log=" + data.resolve("log"),
                "-o",
                "-p " + server.port + " -k " + data));
        return server;
    }

    private static int freePort() throws IOException {
        try (var socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }

    /** The running server. */
    public record Server(Path programs, Path data, int port) implements AutoCloseable {

        public String jdbcUrl(String database) {
            return "jdbc:postgresql://127.0.0.1:" + port + "/" + database;
        }

        public String user() {
            return "postgres";
        }

        /** Runs one of its programs with words that hold no blank; it must succeed. */
        public void run(String line) throws IOException, InterruptedException {
            run(List.of(line.split(" ")));
        }

        private void run(List<String> words) throws IOException, InterruptedException {
            List<String> command = new ArrayList<>();
            if (System.getProperty("user.name").equals("root")) {
                command.addAll(List.of("unshare", "-U")); // the server refuses to run as root
            }
            command.add(programs.resolve(words.get(0)).toString());
            command.addAll(words.subList(1, words.size()));
            Path output = Files.createTempFile("postgres", ".log");
            var builder = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(output.toFile());
            builder.environment().put("PGHOST", "127.0.0.1");
            builder.environment().put("PGPORT", String.valueOf(port));
            builder.environment().put("PGUSER", user());
            int code = builder.directory(new File(".")).start().waitFor();
            if (code != 0) {
                throw new AssertionError(command + " ended with " + code + ":\n" + Files.readString(output));
            }
            Files.delete(output);
        }

        @Override
        public void close() throws IOException {
            try {
                run("pg_ctl stop --wait --mode=fast --pgdata=" + data);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
    }
}
