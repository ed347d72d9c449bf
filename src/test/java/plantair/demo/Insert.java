package plantair.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;

/** One row for a table; as text a statement that does nothing when the plant was not empty at the start. */
final class Insert {

    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss+00").withZone(ZoneOffset.UTC);

    private final String table;
    private final Map<String, Object> values = new LinkedHashMap<>();

    /**
     * A value that the database finds.
     *
     * @param text an expression
     */
    record Sql(String text) {}

    Insert(String table) {
        this.table = table;
    }

    /** Sets a column; null leaves it out. */
    Insert set(String column, @Nullable Object value) {
        if (value != null) {
            values.put(column, value);
        }
        return this;
    }

    /** Sets a column to what SQL says. */
    Insert setSql(String column, String sql) {
        return set(column, new Sql(sql));
    }

    String table() {
        return table;
    }

    @Nullable
    Object value(String column) {
        return values.get(column);
    }

    /** Its columns in the order of setting. */
    Set<String> columns() {
        return values.keySet();
    }

    /** What goes into them, in the same order. */
    Collection<Object> values() {
        return values.values();
    }

    private static String literal(Object value) {
        if (value instanceof Sql sql) {
            return sql.text();
        }
        if (value instanceof Number || value instanceof Boolean) {
            return value.toString();
        }
        if (value instanceof Instant instant) {
            return "timestamp with time zone '" + TIME.format(instant) + "'";
        }
        if (value instanceof LocalDate date) {
            return "date '" + date + "'";
        }
        if (value instanceof UUID uuid) {
            return "cast('" + uuid + "' as uuid)";
        }
        String text = value instanceof Entered entered ? entered.text() : value.toString();
        return "'" + text.replace("'", "''") + "'";
    }

    @Override
    public String toString() {
        String literals = values.values().stream().map(Insert::literal).collect(Collectors.joining(", "));
        return "insert into " + table + " (" + String.join(", ", columns()) + ")\nselect " + literals
                + " from demo_start;\n";
    }
}
