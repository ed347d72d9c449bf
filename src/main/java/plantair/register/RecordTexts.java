package plantair.register;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Types;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;

/**
 * Whole records as text, one line each, read from the tables themselves: {@code column=value} in the order of the column
 * names, then the same for each row that belongs to it. What is null is left out, so that a column added later leaves the
 * text of old records alone.
 */
@Component
public class RecordTexts {

    private final JdbcTemplate jdbc;

    RecordTexts(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** One record; empty when there is none. */
    public Optional<String> of(ChangeKind kind, long id) {
        return Optional.ofNullable(between(kind, id, id).get(id));
    }

    /** The records with ids in a range, by id. */
    public Map<Long, String> between(ChangeKind kind, long first, long last) {
        return texts(kind, " between ? and ?", first, last);
    }

    /** The records with these ids, by id. */
    Map<Long, String> of(ChangeKind kind, Collection<Long> ids) {
        String marks = String.join(", ", Collections.nCopies(ids.size(), "?"));
        return ids.isEmpty() ? Map.of() : texts(kind, " in (" + marks + ")", ids.toArray());
    }

    private Map<Long, String> texts(ChangeKind kind, String which, Object... ids) {
        Map<Long, StringBuilder> texts = new TreeMap<>();
        jdbc.query(
                "select * from " + kind.table() + " where " + kind.key() + which,
                row -> {
                    texts.put(row.getLong(kind.key()), new StringBuilder(columns(row, kind.omitted())));
                },
                ids);
        for (ChangeKind.Part part : kind.parts()) {
            jdbc.query(
                    "select * from " + part.table() + " where " + part.owner() + which + " order by " + part.owner()
                            + ", " + part.order(),
                    row -> {
                        StringBuilder text = texts.get(row.getLong(part.owner()));
                        if (text != null) {
                            text.append('\t').append(part.table()).append('\t').append(columns(row, Set.of()));
                        }
                    },
                    ids);
        }
        Map<Long, String> result = new TreeMap<>();
        texts.forEach((id, text) -> result.put(id, text.toString()));
        return result;
    }

    /** The ids of a kind from one on, in order; there may be some below zero that somebody put in by hand. */
    public List<Long> idsFrom(ChangeKind kind, long id, int most) {
        return jdbc.queryForList(
                "select " + kind.key() + " from " + kind.table() + " where " + kind.key() + " >= ? order by "
                        + kind.key() + " fetch first " + most + " rows only",
                Long.class,
                id);
    }

    /** How many records there are. */
    public long count() {
        return Stream.of(ChangeKind.values())
                .mapToLong(kind ->
                        Objects.requireNonNull(jdbc.queryForObject("select count(*) from " + kind.table(), Long.class)))
                .sum();
    }

    private static String columns(ResultSet row, Set<String> omitted) throws SQLException {
        ResultSetMetaData meta = row.getMetaData();
        Map<String, String> values = new TreeMap<>();
        for (int column = 1; column <= meta.getColumnCount(); column++) {
            String value = value(row, column, meta.getColumnType(column));
            String name = meta.getColumnName(column).toLowerCase(Locale.ROOT);
            if (value != null && !omitted.contains(name)) {
                values.put(name, value);
            }
        }
        StringBuilder text = new StringBuilder();
        values.forEach((name, value) ->
                text.append(text.isEmpty() ? "" : "\t").append(name).append('=').append(LineText.of(value)));
        return text.toString();
    }

    private static @Nullable String value(ResultSet row, int column, int type) throws SQLException {
        return switch (type) {
            case Types.TIMESTAMP, Types.TIMESTAMP_WITH_TIMEZONE -> {
                OffsetDateTime time = row.getObject(column, OffsetDateTime.class);
                yield time == null ? null : time.toInstant().toString();
            }
            case Types.DATE -> {
                LocalDate date = row.getObject(column, LocalDate.class);
                yield date == null ? null : date.toString();
            }
            case Types.BOOLEAN, Types.BIT -> {
                boolean yes = row.getBoolean(column);
                yield row.wasNull() ? null : String.valueOf(yes);
            }
            case Types.DOUBLE -> {
                double number = row.getDouble(column);
                yield row.wasNull() ? null : exactly(number);
            }
            default -> row.getString(column);
        };
    }

    /** Every digit: how many of them Java writes of a double hangs on its version. */
    private static String exactly(double number) {
        return Double.isFinite(number) ? new BigDecimal(number).toString() : String.valueOf(number);
    }
}
