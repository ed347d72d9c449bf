package plantair.testing;

import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.sql.Types;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import javax.sql.DataSource;

/**
 * Makes a plant larger by copying its rows: first the records of each thing, then the things of each site, then the sites.
 * Tables, columns and keys are read from the database, so that a new table grows too. A copy belongs to the copy of what its
 * model belongs to where that is copied in the same step, else to the same.
 */
public final class MoreOfEverything {

    /** Columns that name a row without a foreign key, and its table. */
    private static final Map<String, String> NAMES = Map.of(
            "pump_up_result.compressor_id", "compressor",
            "pump_up_result.gauge_id", "instrument",
            "pump_up_result.thermometer_id", "instrument",
            "pump_up_volume.source_id", "receiver",
            "machine_state.last_test_id", "pump_up_test");

    /** What does not grow: bytes, sessions, and what there is one of. */
    private static final Set<String> FIXED = Set.of(
            "attachment_content",
            "attachment_piece",
            "chain_end",
            "flyway_schema_history",
            "spring_session",
            "shedlock",
            "shared_file",
            "shared_piece",
            "import_job",
            "audit_run",
            "set_up_code",
            "waiting_log",
            "spring_session_attributes");

    /** Things that stand at a site, and what there is once a thing. */
    private static final Set<String> THINGS = Set.of(
            "compressor", "rating_point", "receiver", "pipe_piece", "instrument", "machine_state", "relief_valve");

    /** What a site has once. */
    private static final Set<String> SITES =
            Set.of("site", "plant_limits", "supply_choice", "supply_standby", "due_interval");

    /** Lists of a record, as its steps; they grow before the records do. */
    private static final Set<String> OF_RECORDS = Set.of(
            "found_leak_step",
            "valve_test",
            "logged_run",
            "logged_run_withdrawal",
            "attachment",
            "attachment_withdrawal",
            "machine_readings");

    private final Connection connection;
    private final boolean postgres;
    private final Map<String, Table> tables = new TreeMap<>();

    private MoreOfEverything(Connection connection) throws SQLException {
        this.connection = connection;
        postgres = connection.getMetaData().getDatabaseProductName().equals("PostgreSQL");
        DatabaseMetaData data = connection.getMetaData();
        try (ResultSet row = data.getTables(null, connection.getSchema(), null, new String[] {"TABLE", "BASE TABLE"})) {
            while (row.next()) {
                String name = row.getString("TABLE_NAME");
                if (!FIXED.contains(name)) {
                    tables.put(name, table(data, name));
                }
            }
        }
    }

    /**
     * Copies everything.
     *
     * @param copies made of each row in each of four steps
     */
    public static void in(DataSource dataSource, int copies) throws SQLException {
        try (Connection connection = dataSource.getConnection()) {
            var more = new MoreOfEverything(connection);
            more.checkKeys(false);
            Set<String> all = new LinkedHashSet<>(more.tables.keySet());
            more.step(1, copies, OF_RECORDS);
            more.step(2, copies, without(all, THINGS, SITES));
            more.step(3, 1, without(all, SITES, Set.of("account", "calendar_feed", "account_event")));
            more.step(4, 1, without(all, Set.of("account", "calendar_feed", "account_event")));
            more.checkKeys(true);
            more.moveNumbers();
        }
    }

    private record Table(
            Map<String, Integer> columns, Set<String> key, Map<String, String> names, List<Set<String>> unique) {}

    private static Table table(DatabaseMetaData data, String name) throws SQLException {
        String schema = data.getConnection().getSchema();
        Map<String, Integer> columns = new LinkedHashMap<>();
        try (ResultSet row = data.getColumns(null, schema, name, null)) {
            while (row.next()) {
                columns.put(row.getString("COLUMN_NAME"), row.getInt("DATA_TYPE"));
            }
        }
        Set<String> key = new LinkedHashSet<>();
        try (ResultSet row = data.getPrimaryKeys(null, schema, name)) {
            while (row.next()) {
                key.add(row.getString("COLUMN_NAME"));
            }
        }
        Map<String, String> names = new LinkedHashMap<>();
        try (ResultSet row = data.getImportedKeys(null, schema, name)) {
            while (row.next()) {
                names.put(row.getString("FKCOLUMN_NAME"), row.getString("PKTABLE_NAME"));
            }
        }
        columns.keySet().stream()
                .filter(column -> NAMES.containsKey(name + "." + column))
                .forEach(column -> names.put(column, NAMES.get(name + "." + column)));
        Map<String, Set<String>> unique = new LinkedHashMap<>();
        try (ResultSet row = data.getIndexInfo(null, schema, name, true, true)) {
            while (row.next()) {
                if (row.getString("COLUMN_NAME") != null) {
                    unique.computeIfAbsent(row.getString("INDEX_NAME"), index -> new LinkedHashSet<>())
                            .add(row.getString("COLUMN_NAME"));
                }
            }
        }
        return new Table(columns, key, names, List.copyOf(unique.values()));
    }

    @SafeVarargs
    private static Set<String> without(Collection<String> all, Set<String>... some) {
        Set<String> left = new LinkedHashSet<>(all);
        for (Set<String> one : some) {
            left.removeAll(one);
        }
        return left;
    }

    private void step(int number, int copies, Set<String> which) throws SQLException {
        long apart = (long) Math.pow(10, number + 3);
        List<String> inserts = new ArrayList<>();
        for (String name : which) {
            Table table = tables.get(name);
            List<String> values = new ArrayList<>();
            Set<String> moved = moved(table, which);
            for (var column : table.columns().entrySet()) {
                values.add(value(table, column.getKey(), column.getValue(), moved, number, apart));
            }
            inserts.add("insert into " + name + " (" + quoted(table.columns().keySet()) + ") select "
                    + String.join(", ", values) + " from " + name + " t cross join (values "
                    + numbers(copies) + ") as k (n)");
        }
        try (Statement statement = connection.createStatement()) {
            for (String insert : inserts) {
                statement.executeUpdate(insert);
            }
        }
    }

    private static String numbers(int copies) {
        return LongStream.rangeClosed(1, copies).mapToObj(n -> "(" + n + ")").collect(Collectors.joining(", "));
    }

    private static String quoted(Collection<String> columns) {
        return "\"" + String.join("\", \"", columns) + "\"";
    }

    /** Columns of a table that name rows copied in the same step. */
    private static Set<String> moved(Table table, Set<String> which) {
        Set<String> moved = new LinkedHashSet<>();
        table.names().forEach((column, named) -> {
            if (which.contains(named)) {
                moved.add(column);
            }
        });
        if (table.columns().containsKey("id")) {
            moved.add("id");
        }
        return moved;
    }

    private String value(Table table, String column, int type, Set<String> moved, int step, long apart) {
        String plain = "t.\"" + column + "\"";
        if (moved.contains(column)) {
            return plain + " + k.n * " + apart;
        }
        boolean distinguishes = table.unique().stream()
                .filter(unique -> unique.contains(column))
                .anyMatch(unique -> unique.stream().noneMatch(moved::contains));
        if (!distinguishes || table.names().containsKey(column)) {
            return plain;
        }
        return switch (type) {
            case Types.INTEGER, Types.BIGINT -> plain + " + k.n * " + apart;
            case Types.VARCHAR ->
                column.endsWith("_digest")
                        ? "concat('" + (char) ('a' + step) + "', k.n, substring(" + plain + ", 3))"
                        : "concat(" + plain + ", '" + (char) ('a' + step) + "', k.n)";
            default -> postgres ? "gen_random_uuid()" : "random_uuid()";
        };
    }

    private void checkKeys(boolean on) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(
                    postgres
                            ? "set session_replication_role = " + (on ? "origin" : "replica")
                            : "set referential_integrity " + on);
        }
    }

    private void moveNumbers() throws SQLException {
        try (Statement statement = connection.createStatement()) {
            for (var table : tables.entrySet()) {
                if (table.getValue().columns().containsKey("id")) {
                    statement.execute("alter table " + table.getKey() + " alter column id restart with 100000000");
                }
            }
        }
    }

    /** How many rows each table has that grows. */
    public static Map<String, Long> rows(DataSource dataSource) throws SQLException {
        try (Connection connection = dataSource.getConnection();
                Statement statement = connection.createStatement()) {
            Map<String, Long> rows = new TreeMap<>();
            for (String name : new MoreOfEverything(connection).tables.keySet()) {
                try (ResultSet count = statement.executeQuery("select count(*) from " + name)) {
                    count.next();
                    rows.put(name, count.getLong(1));
                }
            }
            return rows;
        }
    }
}
