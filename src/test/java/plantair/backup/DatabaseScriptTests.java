package plantair.backup;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A backup is of one moment, while somebody writes. Tables are written in alphabetical order: children before parents. */
final class DatabaseScriptTests {

    private static final String SETTINGS = ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH";
    private static final int BACKUPS = 10;
    private static final long PAUSE_NS = 500_000;

    @TempDir
    private Path folder;

    private Connection open(String name) throws SQLException {
        return DriverManager.getConnection("jdbc:h2:" + folder.resolve(name) + SETTINGS, "sa", "");
    }

    @Test
    void holdsTheSameMomentInEveryTableWhileSomebodyWrites() throws SQLException {
        var acknowledged = new AtomicLong();
        var stopped = new AtomicBoolean();
        try (Connection database = open("original");
                Connection writing = open("original")) {
            database.createStatement()
                    .execute("create table parent (id bigint primary key, children bigint not null, t text)");
            database.createStatement()
                    .execute("create table child (id bigint primary key, parent_id bigint references parent (id))");
            var writer = CompletableFuture.runAsync(() -> write(writing, acknowledged, stopped));

            for (int backup = 1; backup <= BACKUPS; backup++) {
                long before = acknowledged.get();
                Path file = folder.resolve("backup-" + backup);
                DatabaseScript.write(database, file);
                long after = acknowledged.get() + 1;

                try (Connection restored = open("restored-" + backup)) {
                    DatabaseScript.read(restored, file);
                    long parents = number(restored, "select count(*) from parent");
                    assertThat(parents).isBetween(before, after);
                    assertThat(number(restored, "select coalesce(max(id), 0) from parent"))
                            .isEqualTo(parents);
                    assertThat(number(restored, "select count(*) from child")).isEqualTo(parents);
                }
            }
            stopped.set(true);
            writer.join();
        }
        assertThat(acknowledged.get()).as("the writer wrote meanwhile").isGreaterThan(BACKUPS);
    }

    /** Each transaction is a parent with its child. */
    private static void write(Connection connection, AtomicLong acknowledged, AtomicBoolean stopped) {
        try (var parent = connection.prepareStatement("insert into parent values (?, 1, 'it''s \n“so”; -- ½')");
                var child = connection.prepareStatement("insert into child values (?, ?)")) {
            connection.setAutoCommit(false);
            for (long id = 1; !stopped.get(); id++) {
                parent.setLong(1, id);
                parent.executeUpdate();
                child.setLong(1, id);
                child.setLong(2, id);
                child.executeUpdate();
                connection.commit();
                acknowledged.set(id);
                LockSupport.parkNanos(PAUSE_NS);
            }
        } catch (SQLException failed) {
            throw new IllegalStateException(failed);
        }
    }

    private static long number(Connection connection, String sql) throws SQLException {
        try (var rows = connection.createStatement().executeQuery(sql)) {
            rows.next();
            return rows.getLong(1);
        }
    }
}
