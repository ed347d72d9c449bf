package plantair.backup;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;

/**
 * The whole H2 database as SQL, which any later version of H2 reads. The script is one statement of one serializable
 * transaction, so all its tables are of the same moment however many people write; with the usual isolation each table
 * would be of a moment of its own.
 */
final class DatabaseScript {

    private static final String WRITE = "script nosettings to ? compression gzip charset 'UTF-8'";
    private static final String READ = "runscript from ? compression gzip charset 'UTF-8'";

    private DatabaseScript() {}

    static boolean isH2(Connection connection) throws SQLException {
        return connection.getMetaData().getURL().startsWith("jdbc:h2:");
    }

    static void write(Connection connection, Path file) throws SQLException {
        connection.setAutoCommit(false);
        connection.setTransactionIsolation(Connection.TRANSACTION_SERIALIZABLE);
        run(connection, WRITE, file);
        connection.commit();
    }

    /** Into an empty database, which is worth nothing before it is full: it need not wait for the disk at each row. */
    static void read(Connection connection, Path file) throws SQLException {
        try (var statement = connection.createStatement()) {
            statement.execute("set write_delay 1000");
        }
        run(connection, READ, file);
    }

    private static void run(Connection connection, String sql, Path file) throws SQLException {
        try (var statement = connection.prepareStatement(sql)) {
            statement.setString(1, file.toAbsolutePath().toString());
            statement.execute();
        }
    }
}
