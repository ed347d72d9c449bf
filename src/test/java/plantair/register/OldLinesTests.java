package plantair.register;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.SQLException;
import java.util.List;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;
import plantair.testing.PostgresServer;

/** A plant recorded before there was a chain: lines that named the machine come to name the record that they tell of. */
final class OldLinesTests {

    private static final String BEFORE = "7";

    private static final String MACHINE = """
            insert into compressor (site_id, tag, maker_model, serial_number, kind, stages, drive, control, note, in_service,
                version)
            select id, ?, '', '', 'PISTON', 1, 'BELT', 'START_STOP', '', true, 0 from site""";

    private static final String TEST = """
            insert into pump_up_test (submission, compressor_id, performed_at, zone, tester, site_elevation,
                intake_temperature, air_temperature, notes, confirmed, method_version, recorded_at, recorded_by)
            select cast('00000000-0000-0000-0000-00000000010' || id as uuid), id,
                timestamp with time zone '2026-01-01 00:00:00+00', 'UTC', 'Ann', '1 m', '20 Cel', 'MEASURED', '', '', 'PU-1',
                timestamp with time zone '2026-01-01 00:00:00+00', 'Ann' from compressor where tag = ?""";

    private static final String WORK = """
            insert into maintenance_event (submission, compressor_id, happened_on, kind, may_step, done_by, note, withdrawn,
                recorded_at, recorded_by)
            select cast('00000000-0000-0000-0000-00000000020' || id as uuid), id, date '2026-01-02', 'BELT', true, 'Ann', '',
                false, timestamp with time zone '2026-01-02 00:00:00+00', 'Ann' from compressor where tag = ?""";

    private static final String CHOICE = """
            insert into baseline_choice (submission, compressor_id, test_id, reason, chosen_at, chosen_by)
            select cast(? as uuid), compressor_id, id, 'x', recorded_at, 'Ann' from pump_up_test
            where compressor_id = ? order by id limit 1""";

    private static final String CORRECTION = """
            insert into maintenance_event (submission, compressor_id, happened_on, kind, may_step, done_by, note, withdrawn,
                recorded_at, recorded_by, supersedes_id, reason)
            select cast(? as uuid), compressor_id, happened_on, kind, may_step, done_by, note, false,
                recorded_at, 'Ann', id, 'slip' from maintenance_event
            where compressor_id = ? order by id desc limit 1""";

    private static final String LINE = """
            insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)
            values (timestamp with time zone '2026-01-01 00:00:00+00', 'Ann', ?, ?, 'x', 'x', 'x')""";

    @Test
    void nameTheirRecordOnH2() {
        var one = new SingleConnectionDataSource(
                "jdbc:h2:mem:old-lines;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH",
                "sa",
                "",
                true);
        namesTheirRecord(one);
        one.destroy();
    }

    @Test
    void nameTheirRecordOnPostgres() throws SQLException {
        PostgresServer server = PostgresServer.ofThisRun();
        var one = new SingleConnectionDataSource(server.jdbcUrl(), server.username(), server.password(), true);
        var jdbc = new JdbcTemplate(one);
        jdbc.execute("create schema old_lines");
        try {
            jdbc.execute("set search_path to old_lines");
            namesTheirRecord(one);
        } finally {
            jdbc.execute("drop schema old_lines cascade");
            one.destroy();
        }
    }

    private static void namesTheirRecord(DataSource database) {
        migrate(database, BEFORE);
        var jdbc = new JdbcTemplate(database);
        jdbc.update("insert into site (name, zone, elevation, note, version) values ('x', 'UTC', '1 m', '', 0)");
        for (String tag : List.of("C-1", "C-2")) {
            jdbc.update(MACHINE, tag);
            jdbc.update(TEST, tag);
            jdbc.update(WORK, tag);
        }
        long machine = 1;
        long other = 2;
        long[] machines = {other, machine, other};
        for (int number = 0; number < machines.length; number++) {
            String submission = "00000000-0000-0000-0000-00000000000" + number;
            jdbc.update(CHOICE, submission, machines[number]);
            jdbc.update(LINE, "BASELINE", machines[number]);
            jdbc.update(CORRECTION, submission, machines[number]);
            jdbc.update(LINE, "EVENT", machines[number]);
        }

        migrate(database, "9");

        var read = JdbcClient.create(database);
        assertThat(read.sql("select object_id from change_record where kind = 'BASELINE' order by id")
                        .query(Long.class)
                        .list())
                .isEqualTo(read.sql("select id from baseline_choice order by id")
                        .query(Long.class)
                        .list())
                .hasSize(3);
        assertThat(read.sql("select object_id from change_record where kind = 'EVENT' order by id")
                        .query(Long.class)
                        .list())
                .isEqualTo(read.sql("select id from maintenance_event where supersedes_id is not null order by id")
                        .query(Long.class)
                        .list())
                .hasSize(3);
    }

    private static void migrate(DataSource database, String target) {
        FluentConfiguration flyway = Flyway.configure().dataSource(database).target(target);
        flyway.locations("filesystem:db/migration").load().migrate();
    }
}
