package plantair.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;
import plantair.audit.AuditCheck;
import plantair.register.ChainIntake;
import plantair.register.ChangeKind;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testrecord.ResultProjection;

/** A made group is a plant like any other: results come of it, and its records are sound. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class GroupPlantTests {

    private static final int MACHINES = 50;
    private static final int TESTS = 204;

    @Autowired
    private Database database;

    @Autowired
    private DataSource dataSource;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private ResultProjection projection;

    @Autowired
    private ChainIntake chain;

    @Autowired
    private AuditCheck audit;

    @BeforeAll
    void make() throws SQLException {
        database.wipe();
        fill();
        projection.fill(done -> {});
    }

    private void fill() throws SQLException {
        try (Connection connection = dataSource.getConnection()) {
            try {
                GroupMaker.make(connection, MACHINES, TESTS);
            } finally {
                connection.rollback();
                connection.setAutoCommit(true);
            }
        }
    }

    @AfterAll
    void wipe() {
        database.wipe();
    }

    private int count(String sql) {
        return jdbc.queryForList(sql).size();
    }

    @Test
    void hasAsManyMachinesAndTestsAsWereAskedFor() {
        assertThat(count("select 1 from site")).isEqualTo(2);
        assertThat(count("select 1 from compressor")).isEqualTo(MACHINES);
        assertThat(count("select 1 from pump_up_test")).isEqualTo(TESTS);
        assertThat(jdbc.queryForList("select distinct count(*) from pump_up_test group by compressor_id", Long.class))
                .containsExactlyInAnyOrder(4L, 5L);
    }

    @Test
    void deliversWhatItsKindsDo() {
        List<Double> ratios = jdbc.queryForList(
                "select rating_ratio from pump_up_result where rating_ratio is not null", Double.class);

        assertThat(ratios).hasSizeGreaterThan(100).allMatch(ratio -> ratio > 0.5 && ratio < 1.4);
        assertThat(count("select 1 from pump_up_result where joins_trend = true"))
                .isGreaterThan(TESTS / 2);
    }

    @Test
    void isTheSameEachTime() throws SQLException {
        String runs = "select * from pump_up_run order by test_id, position";
        List<Map<String, Object>> first = jdbc.queryForList(runs);
        database.wipe();

        make();

        assertThat(jdbc.queryForList(runs)).isEqualTo(first);
    }

    @Test
    void isTakenIntoTheChainAndSound() {
        transaction.executeWithoutResult(
                status -> chain.takeIn(EnumSet.complementOf(EnumSet.of(ChangeKind.ACCOUNT)), "a test", "made"));
        database.recordPeople();

        assertThat(audit.check(done -> {}).faults()).isEmpty();
    }

    @Test
    void goesIntoAnEmptyDatabaseOnly() {
        assertThatThrownBy(this::fill).hasMessageContaining("holds a plant already");
    }
}

@OnH2
final class GroupPlantOnH2Tests extends GroupPlantTests {}

@OnPostgres
final class GroupPlantOnPostgresTests extends GroupPlantTests {}
