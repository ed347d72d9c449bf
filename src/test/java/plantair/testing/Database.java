package plantair.testing;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;
import plantair.account.SignedIn;
import plantair.history.WorstFirst;
import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.register.Changes;

/** The database of the running test; takes part in no transaction of the test. */
@TestComponent
public class Database {

    private static final String TABLES = """
            select table_name from information_schema.tables
            where table_schema = current_schema and table_type = 'BASE TABLE'
                and table_name not in ('flyway_schema_history', 'shedlock')
            order by table_name""";

    private static final String FROM_THE_START = """
            select setval(quote_ident(sequencename)::regclass, start_value, false) from pg_sequences
            where schemaname = current_schema""";

    private static final String LET_IN = """
            insert into account
                (id, username, display_name, role, enabled, password_hash, must_change_password, epoch, version)
            values (?, ?, ?, ?, true, ?, false, 0, 0)""";

    private final JdbcTemplate jdbc;
    private final Changes changes;
    private final TransactionTemplate transaction;
    private final WorstFirst order;

    Database(JdbcTemplate jdbc, Changes changes, TransactionTemplate transaction, WorstFirst order) {
        this.jdbc = jdbc;
        this.changes = changes;
        this.transaction = transaction;
        this.order = order;
        letInPeople();
    }

    /**
     * Empties every table of the application, also those whose triggers forbid it, and restarts the identities; then
     * lets in the {@link People} again, of whom no line of the change log tells until {@link #recordPeople()}.
     */
    public void wipe() {
        List<String> tables = tables();
        if (tables.isEmpty()) {
            return;
        }
        List<String> statements = new ArrayList<>(isPostgres() ? onPostgres(tables) : onH2(tables));
        if (tables.contains("chain_end")) {
            statements.add("insert into chain_end (id, chain_number, digest, begun) values (1, 0, '" + "0".repeat(64)
                    + "', true)");
        }
        jdbc.execute((ConnectionCallback<int[]>) connection -> runAll(connection, statements));
        letInPeople();
        order.forget(); // the next plant may end its chain just as this one did
    }

    /** Puts the accounts as they were and forgets all sign-ins; after each test that changed them. */
    public void letInPeople() {
        jdbc.update("delete from account_event");
        jdbc.update("delete from account");
        for (SignedIn person : People.ALL) {
            jdbc.update(
                    LET_IN,
                    person.id(),
                    person.username(),
                    person.displayName(),
                    person.role().name(),
                    People.HASH);
        }
        jdbc.execute("alter table account alter column id restart with " + (People.ALL.size() + 1));
    }

    /** Writes the lines that the accounts would have, had somebody opened them; for tests that check every record. */
    public void recordPeople() {
        transaction.executeWithoutResult(status -> People.ALL.forEach(person -> changes.save(new ChangeRecord(
                FixedClock.NOW,
                "first start",
                ChangeKind.ACCOUNT,
                person.id(),
                person.username(),
                null,
                "username: " + person.username(),
                "opened"))));
    }

    /** All tables of the application, in alphabetical order. */
    public List<String> tables() {
        return jdbc.queryForList(TABLES, String.class);
    }

    public boolean isPostgres() {
        return Boolean.TRUE.equals(jdbc.execute((ConnectionCallback<Boolean>)
                connection -> connection.getMetaData().getDatabaseProductName().equals("PostgreSQL")));
    }

    /** Truncating makes new files for each table and index, a fifth of a second for all, so only what has rows is emptied. */
    private List<String> onPostgres(List<String> tables) {
        String filled = quoted(tables).stream()
                .map(table -> "select '" + table + "' where exists (select 1 from " + table + ")")
                .collect(Collectors.joining(" union all "));
        List<String> statements =
                new ArrayList<>(List.of("set session_replication_role = replica")); // no trigger fires
        jdbc.queryForList(filled, String.class).forEach(table -> statements.add("delete from " + table));
        jdbc.queryForList(FROM_THE_START, Long.class);
        statements.add("set session_replication_role = origin");
        return statements;
    }

    private static List<String> onH2(List<String> tables) {
        List<String> statements = new ArrayList<>(List.of("set referential_integrity false"));
        quoted(tables).forEach(table -> statements.add("truncate table " + table + " restart identity"));
        statements.add("set referential_integrity true");
        return statements;
    }

    private static List<String> quoted(List<String> names) {
        return names.stream().map(name -> '"' + name + '"').toList();
    }

    private static int[] runAll(Connection connection, List<String> statements) throws SQLException {
        try (var statement = connection.createStatement()) {
            for (String sql : statements) {
                statement.addBatch(sql);
            }
            return statement.executeBatch();
        }
    }
}
