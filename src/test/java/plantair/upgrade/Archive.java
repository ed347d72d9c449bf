package plantair.upgrade;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The demo plant as an earlier program kept it on H2, with the results that it computed; made as src/test/resources/archives/README.md
 * says.
 *
 * @param step number of the newest migration of that program
 */
record Archive(int step) {

    static final Path FOLDER = Path.of("src/test/resources/archives");
    private static final String BEGIN = "V";
    private static final String END = ".sql.gz";
    private static final String READ = "runscript from ? compression gzip charset 'UTF-8'";

    /** All there are, the oldest first. */
    static List<Archive> all() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(END))
                    .map(name -> name.substring(BEGIN.length(), name.length() - END.length()))
                    .map(Integer::valueOf)
                    .sorted()
                    .map(Archive::new)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Those that are opened on H2. */
    static List<Archive> onH2() {
        return everySecond(0);
    }

    /** Those that are opened on PostgreSQL. */
    static List<Archive> onPostgres() {
        return everySecond(1);
    }

    /** Each start takes seconds, so each archive has its turn on one database; on both with {@code -Darchives=all}. */
    private static List<Archive> everySecond(int first) {
        List<Archive> all = all();
        return System.getProperty("archives", "").equals("all")
                ? all
                : IntStream.range(0, all.size())
                        .filter(index -> index % 2 == first)
                        .mapToObj(all::get)
                        .toList();
    }

    /** A database in memory for this archive alone. */
    TodaysProgram.Place place() {
        String url = "jdbc:h2:mem:archive-" + step
                + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1;QUERY_CACHE_SIZE=256";
        return new TodaysProgram.Place(url, "sa", "");
    }

    /** Reads it into the database at {@link #place()}, as a restore does. */
    Connection open() throws SQLException {
        Connection connection = DriverManager.getConnection(place().url(), place().user(), place().password());
        try (var statement = connection.prepareStatement(READ)) {
            statement.setString(1, FOLDER.resolve(BEGIN + step + END).toString());
            statement.execute();
        }
        return connection;
    }

    /** Drops what was read; the file stays. */
    void forget(Connection connection) throws SQLException {
        try (var statement = connection.createStatement()) {
            statement.execute("drop all objects");
        }
    }

    @Override
    public String toString() {
        return BEGIN + step;
    }
}
