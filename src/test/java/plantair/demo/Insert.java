package plantair.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.StringJoiner;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;

/** One insert statement, which does nothing when the plant was not empty at the start. */
final class Insert {

    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss+00").withZone(ZoneOffset.UTC);

    private final String table;
    private final StringJoiner columns = new StringJoiner(", ");
    private final StringJoiner values = new StringJoiner(", ");

    Insert(String table) {
        this.table = table;
    }

    /** Sets a column; null leaves it out. */
    Insert set(String column, @Nullable Object value) {
        return value == null ? this : setSql(column, literal(value));
    }

    /** Sets a column to what SQL says. */
    Insert setSql(String column, String sql) {
        columns.add(column);
        values.add(sql);
        return this;
    }

    private static String literal(Object value) {
        if (value instanceof Integer || value instanceof Boolean) {
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
        return "insert into " + table + " (" + columns + ")\nselect " + values + " from demo_start;\n";
    }
}
