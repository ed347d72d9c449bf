package plantair.upgrade;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.flywaydb.core.Flyway;
import plantair.testing.PostgresServer;

/**
 * An archive in PostgreSQL, as an earlier program would have left it there: the schema is made by the migrations up to the
 * step of the archive, the rows are copied.
 */
final class PostgresCopy {

    private static final String SCHEMA = "archived";
    private static final String DROP = "drop schema if exists " + SCHEMA + " cascade";
    private static final String IDENTITIES = """
            select table_name, column_name from information_schema.columns
            where table_schema = current_schema and is_identity = 'YES' order by table_name""";

    private final Connection postgres;

    private PostgresCopy(Connection postgres) {
        this.postgres = postgres;
    }

    /** Makes it in a schema of its own, in place of the one before, and says where that is. */
    static TodaysProgram.Place of(Archive archive, Connection original) throws SQLException {
        var place = place();
        try (var postgres = DriverManager.getConnection(place.url(), place.user(), place.password())) {
            new PostgresCopy(postgres).make(archive, original, place);
        }
        return place;
    }

    /** Leaves the server as it was. */
    static void drop() throws SQLException {
        var place = place();
        try (var postgres = DriverManager.getConnection(place.url(), place.user(), place.password())) {
            new PostgresCopy(postgres).run(DROP);
        }
    }

    private void make(Archive archive, Connection original, TodaysProgram.Place place) throws SQLException {
        run(DROP, "create schema " + SCHEMA);
        Flyway.configure()
                .dataSource(place.url(), place.user(), place.password())
                .locations("filesystem:db/migration")
                .target(String.valueOf(archive.step()))
                .load()
                .migrate();
        fill(original);
    }

    private static TodaysProgram.Place place() {
        PostgresServer server = PostgresServer.ofThisRun();
        String mark = server.jdbcUrl().contains("?") ? "&" : "?";
        return new TodaysProgram.Place(
                server.jdbcUrl() + mark + "currentSchema=" + SCHEMA, server.username(), server.password());
    }

    private void fill(Connection original) throws SQLException {
        Map<String, List<String>> tables = Snapshot.columns(original);
        tables.remove("flyway_schema_history"); // it has its own
        run("set session_replication_role = replica"); // rows come in any order
        for (var table : tables.entrySet()) {
            run("delete from " + Snapshot.quoted(table.getKey()));
            copy(original, table.getKey(), table.getValue());
        }
        run("set session_replication_role = origin");
        goOnBehind();
    }

    private void copy(Connection original, String table, List<String> columns) throws SQLException {
        String list = columns.stream().map(Snapshot::quoted).collect(Collectors.joining(", "));
        String marks = String.join(", ", Collections.nCopies(columns.size(), "?"));
        try (Statement all = original.createStatement();
                var row = all.executeQuery("select " + list + " from " + Snapshot.quoted(table));
                var insert = postgres.prepareStatement(
                        "insert into " + Snapshot.quoted(table) + " (" + list + ") values (" + marks + ")")) {
            while (row.next()) {
                for (int index = 0; index < columns.size(); index++) {
                    insert.setObject(index + 1, Snapshot.value(row, columns.get(index)));
                }
                insert.addBatch();
            }
            insert.executeBatch();
        }
    }

    /** The next ids come behind those that were copied. */
    private void goOnBehind() throws SQLException {
        try (var statement = postgres.createStatement();
                var identity = statement.executeQuery(IDENTITIES)) {
            while (identity.next()) {
                String table = identity.getString(1);
                String column = identity.getString(2);
                run("select setval(pg_get_serial_sequence('" + table + "', '" + column + "'), coalesce(max("
                        + Snapshot.quoted(column) + "), 0) + 1, false) from " + Snapshot.quoted(table));
            }
        }
    }

    private void run(String... statements) throws SQLException {
        try (var statement = postgres.createStatement()) {
            for (String sql : statements) {
                statement.execute(sql);
            }
        }
    }
}
