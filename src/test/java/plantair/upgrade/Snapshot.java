package plantair.upgrade;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What the tables of a database hold, each value as text that is the same from H2 and PostgreSQL.
 *
 * @param tables the rows of each table, a row as its values by column
 */
record Snapshot(Map<String, List<Map<String, String>>> tables) {

    private static final String COLUMNS = """
            select c.table_name, c.column_name from information_schema.columns c
            join information_schema.tables t on t.table_schema = c.table_schema and t.table_name = c.table_name
            where c.table_schema = current_schema and t.table_type = 'BASE TABLE'
            order by c.table_name, c.ordinal_position""";

    /** All of it. */
    static Snapshot of(Connection connection) throws SQLException {
        return of(connection, columns(connection));
    }

    /** No more than these columns of these tables; fails where one is gone. */
    static Snapshot of(Connection connection, Map<String, List<String>> columns) throws SQLException {
        Map<String, List<Map<String, String>>> tables = new TreeMap<>();
        for (var table : columns.entrySet()) {
            tables.put(table.getKey(), rows(connection, table.getKey(), table.getValue()));
        }
        return new Snapshot(tables);
    }

    /** The columns of each table. */
    static Map<String, List<String>> columns(Connection connection) throws SQLException {
        Map<String, List<String>> columns = new TreeMap<>();
        try (var statement = connection.createStatement();
                var row = statement.executeQuery(COLUMNS)) {
            while (row.next()) {
                columns.computeIfAbsent(row.getString(1), table -> new ArrayList<>())
                        .add(row.getString(2));
            }
        }
        return columns;
    }

    List<Map<String, String>> rows(String table) {
        return tables.get(table);
    }

    private static List<Map<String, String>> rows(Connection connection, String table, List<String> columns)
            throws SQLException {
        String list = columns.stream().map(Snapshot::quoted).collect(Collectors.joining(", "));
        List<Map<String, String>> rows = new ArrayList<>();
        try (var statement = connection.createStatement();
                var row = statement.executeQuery("select " + list + " from " + quoted(table))) {
            while (row.next()) {
                Map<String, String> values = new LinkedHashMap<>();
                for (String column : columns) {
                    values.put(column, text(value(row, column)));
                }
                rows.add(values);
            }
        }
        return rows;
    }

    static String quoted(String name) {
        return '"' + name + '"';
    }

    /** The value as one that PostgreSQL takes too: long text as text, a moment with its offset. */
    static @Nullable Object value(ResultSet row, String column) throws SQLException {
        Object value = row.getObject(column);
        if (value instanceof java.sql.Clob) {
            return row.getString(column);
        }
        return value instanceof java.sql.Timestamp ? row.getObject(column, OffsetDateTime.class) : value;
    }

    private static String text(@Nullable Object value) {
        if (value instanceof byte[] bytes) {
            return HexFormat.of().formatHex(bytes);
        }
        return value instanceof OffsetDateTime moment ? moment.toInstant().toString() : String.valueOf(value);
    }
}
