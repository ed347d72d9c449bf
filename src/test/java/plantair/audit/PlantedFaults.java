package plantair.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Alters the database behind the program's back, looks what a check says of it, and takes it back.
 *
 * @param <T> what the check says
 */
final class PlantedFaults<T> {

    private static final String COLUMNS = """
            select column_name, data_type from information_schema.columns
            where table_schema = current_schema and table_name = ? order by column_name""";

    /** Texts that some constraint of a table may let through; one is enough. */
    private static final List<String> TEXTS = List.of(
            "'SILENT'",
            "'LOW'",
            "'SLACK'",
            "'x'",
            "'PIPE'",
            "'OTHER'",
            "'UNKNOWN'",
            "'GUESS'",
            "'SCREW'",
            "'BELT'",
            "'PDF'",
            "'SETTLED'",
            "'CHECK_VALVE'",
            "'EN_1_6'",
            "'MANAGER'",
            "'BENCH'",
            "'INTERNAL'",
            "'HEAD'",
            "'TWO_READINGS'",
            "'PART_OF_SYSTEM'",
            "'HOSE'",
            "'METER'",
            "'TIGHT'",
            "'UTF_16BE'",
            "'SEMICOLON'",
            "'COMMA'",
            "'MINUTES'",
            "'ABSOLUTE'");

    private final JdbcTemplate jdbc;
    private final TransactionTemplate transaction;
    private final Supplier<T> check;

    PlantedFaults(JdbcTemplate jdbc, TransactionTemplate transaction, Supplier<T> check) {
        this.jdbc = jdbc;
        this.transaction = transaction;
        this.check = check;
    }

    /** What the check says after these statements; empty when a constraint refuses them. */
    Optional<T> after(String... statements) {
        try {
            return Optional.ofNullable(transaction.execute(status -> {
                status.setRollbackOnly();
                for (String sql : statements) {
                    assertThat(jdbc.update(sql)).as(sql).isPositive();
                }
                return check.get();
            }));
        } catch (DataAccessException refused) {
            return Optional.empty();
        }
    }

    /** Alters each of these columns of a row, and gives the columns that took no value. */
    Set<String> alterEachColumn(String table, String row, Predicate<String> which, Consumer<T> found) {
        Set<String> refused = new TreeSet<>();
        for (Map.Entry<String, String> column : columns(table).entrySet()) {
            if (which.test(column.getKey()) && !alter(table, row, column.getKey(), column.getValue(), found)) {
                refused.add(column.getKey());
            }
        }
        return refused;
    }

    /** Alters one column, once for each value that the database takes and once for one of the {@link #TEXTS}; false when it takes none. */
    boolean alterColumn(String table, String row, String column, Consumer<T> found) {
        return alter(table, row, column, columns(table).get(column), found);
    }

    private boolean alter(String table, String row, String column, String type, Consumer<T> found) {
        boolean took = false;
        for (String value : values(column, type)) {
            took |= set(table, row, column, value, found);
        }
        return isText(type) && TEXTS.stream().anyMatch(value -> set(table, row, column, value, found)) || took;
    }

    private boolean set(String table, String row, String column, String value, Consumer<T> found) {
        String differs = column + " is distinct from " + value;
        if (count("select count(*) from " + table + " where " + row + " and " + differs) != 1) {
            return false;
        }
        Optional<T> report = after("update " + table + " set " + column + " = " + value + " where " + row);
        report.ifPresent(found);
        return report.isPresent();
    }

    private static boolean isText(String type) {
        return Set.of("character varying", "text").contains(type.toLowerCase(Locale.ROOT));
    }

    private static List<String> values(String column, String type) {
        List<String> values = new ArrayList<>(List.of("null"));
        switch (type.toLowerCase(Locale.ROOT)) {
            case "character varying", "text" -> {
                values.add("''");
                values.add("' ' || " + column); // behind it PostgreSQL cuts what a column is too short for
            }
            case "boolean" -> values.addAll(List.of("true", "false"));
            case "date" -> values.addAll(List.of("date '2031-05-06'", "date '2020-05-06'"));
            case "timestamp with time zone" -> values.add("timestamp with time zone '2020-01-01 00:00:00+00'");
            case "uuid" -> values.add("cast('" + new UUID(1, 2) + "' as uuid)");
            case "double precision" -> values.addAll(List.of("coalesce(" + column + ", 1) * 1.000000000001e0", "0"));
            default -> values.addAll(List.of("1", "3", "77", column + " + 1"));
        }
        return values;
    }

    Map<String, String> columns(String table) {
        Map<String, String> columns = new LinkedHashMap<>();
        jdbc.query(
                COLUMNS,
                row -> {
                    columns.put(row.getString(1), row.getString(2));
                },
                table);
        return columns;
    }

    private long count(String sql) {
        Long count = jdbc.queryForObject(sql, Long.class);
        return count == null ? 0 : count;
    }
}
