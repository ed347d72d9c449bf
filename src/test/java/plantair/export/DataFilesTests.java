package plantair.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;

/** Nothing of the database is left out of the files, but what is derived or what only the database needs. */
abstract class DataFilesTests {

    /** Derived and rebuilt by the program, or not of the records. */
    private static final Set<String> NOT_EXPORTED = Set.of(
            "pump_up_result",
            "machine_state",
            "flyway_schema_history",
            "chain_end",
            "attachment_content", // as files beside
            "attachment_piece",
            "test_draft",
            "shedlock",
            "shared_file",
            "shared_piece",
            "import_job",
            "audit_run",
            "set_up_code",
            "waiting_log",
            "account",
            "account_event",
            "calendar_feed",
            "spring_session",
            "spring_session_attributes");

    /** The number of a change is its place in the file; its digests are in the audit file. */
    private static final Set<String> LEFT_OUT = Set.of(
            "change_record.id",
            "change_record.chain_number",
            "change_record.content_digest",
            "change_record.previous_digest",
            "change_record.digest",
            "plant_limits.id");

    @Autowired
    private JdbcTemplate jdbc;

    @Test
    void holdEveryColumnOfEveryTable() {
        Set<String> exported = DataFiles.TABLES.stream()
                .flatMap(file -> file.columns().stream().map(column -> file.table() + "." + column.column()))
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(columns("")).isEqualTo(exported);
    }

    @Test
    void knowWhichColumnsMayBeEmpty() {
        Set<String> optional = DataFiles.TABLES.stream()
                .flatMap(file -> file.columns().stream()
                        .filter(DataColumn::optional)
                        .map(column -> file.table() + "." + column.column()))
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(columns("and c.is_nullable = 'YES'")).isEqualTo(optional);
    }

    @Test
    void referToNoTableThatComesLater() {
        List<String> order = DataFiles.TABLES.stream().map(DataFile::table).toList();
        List<String> earlier = order.stream()
                .flatMap(table ->
                        order.subList(0, order.indexOf(table) + 1).stream().map(before -> table + " " + before))
                .toList();

        assertThat(references()).isNotEmpty().allMatch(earlier::contains);
    }

    @Test
    void haveTheRecordedColumnsOfTestsInTheFileOfTests() {
        List<String> headers = TestColumns.ALL.stream().map(TestColumn::header).toList();

        assertThat(Stream.of(TestTables.TESTS, TestTables.RUNS).flatMap(file -> file.headers().stream()))
                .allMatch(headers::contains);
    }

    private Set<String> columns(String condition) {
        return jdbc
                .query(
                        "select c.table_name, c.column_name from information_schema.columns c"
                                + " join information_schema.tables t on t.table_name = c.table_name"
                                + " and t.table_schema = c.table_schema"
                                + " where c.table_schema = current_schema and t.table_type = 'BASE TABLE' " + condition,
                        (row, number) -> List.of(row.getString(1), row.getString(2)))
                .stream()
                .filter(column -> !NOT_EXPORTED.contains(column.get(0)))
                .map(column -> String.join(".", column))
                .filter(column -> !LEFT_OUT.contains(column))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private List<String> references() {
        return jdbc
                .query(
                        "select f.table_name, p.table_name from information_schema.referential_constraints r"
                                + " join information_schema.table_constraints f on f.constraint_name = r.constraint_name"
                                + " join information_schema.table_constraints p on p.constraint_name = r.unique_constraint_name"
                                + " where f.table_schema = current_schema and p.table_schema = current_schema",
                        (row, number) -> List.of(row.getString(1), row.getString(2)))
                .stream()
                .filter(pair -> pair.stream().noneMatch(NOT_EXPORTED::contains))
                .map(pair -> String.join(" ", pair))
                .toList();
    }
}

@OnH2
final class DataFilesOnH2Tests extends DataFilesTests {}

@OnPostgres
final class DataFilesOnPostgresTests extends DataFilesTests {}
