package plantair.demo;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import plantair.quantity.Entered;

/** Sends rows to a database in batches, with numbers of their own. */
final class GroupRows extends Script {

    /** Tables whose rows are named by a number. */
    private static final Set<String> NUMBERED =
            Set.of("site", "compressor", "receiver", "pipe_piece", "instrument", "pump_up_test");

    private final Connection connection;

    /** By table, in the order in which the first row of each came, then by statement: a row follows what it belongs to. */
    private final Map<String, Map<String, List<Collection<Object>>>> batches = new LinkedHashMap<>();

    private final Map<String, Long> last = new HashMap<>();
    private final Map<String, Long> ids = new HashMap<>();
    private final Map<UUID, Long> tests = new HashMap<>();

    GroupRows(Connection connection) {
        this.connection = connection;
    }

    @Override
    void add(Insert insert) {
        if (NUMBERED.contains(insert.table())) {
            number(insert);
        }
        String columns = String.join(", ", insert.columns());
        String marks = String.join(", ", Collections.nCopies(insert.columns().size(), "?"));
        batches.computeIfAbsent(insert.table(), table -> new LinkedHashMap<>())
                .computeIfAbsent(
                        "insert into " + insert.table() + " (" + columns + ") values (" + marks + ")",
                        sql -> new ArrayList<>())
                .add(insert.values());
    }

    private void number(Insert insert) {
        long id = last.merge(insert.table(), 1L, Long::sum);
        insert.set("id", id);
        if (insert.table().equals("pump_up_test")) {
            tests.put((UUID) Objects.requireNonNull(insert.value("submission")), id);
        } else {
            Object name = insert.value(insert.table().equals("site") ? "name" : "tag");
            ids.put(insert.table() + " " + name, id);
        }
    }

    @Override
    Object idOf(String table, String name) {
        return Objects.requireNonNull(ids.get(table + " " + name), name);
    }

    @Override
    Object idOf(UUID test) {
        return Objects.requireNonNull(tests.get(test));
    }

    /** Sends what was added since the last time, and forgets the tests among it. */
    void send() throws SQLException {
        for (var statements : batches.values()) {
            for (var batch : statements.entrySet()) {
                send(batch.getKey(), batch.getValue());
                batch.getValue().clear();
            }
        }
        tests.clear();
        connection.commit();
    }

    private void send(String sql, List<Collection<Object>> rows) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            for (Collection<Object> row : rows) {
                int column = 1;
                for (Object value : row) {
                    statement.setObject(column++, bound(value));
                }
                statement.addBatch();
            }
            statement.executeBatch();
        }
    }

    private static Object bound(Object value) {
        if (value instanceof Instant instant) {
            return instant.atOffset(ZoneOffset.UTC);
        }
        if (value instanceof Entered entered) {
            return entered.text();
        }
        return value instanceof Enum<?> constant ? constant.name() : value;
    }

    /** New rows go on after the numbers used here. */
    void moveNumbers() throws SQLException {
        try (var statement = connection.createStatement()) {
            for (var table : last.entrySet()) {
                statement.execute(
                        "alter table " + table.getKey() + " alter column id restart with " + (table.getValue() + 1));
            }
        }
        connection.commit();
    }
}
