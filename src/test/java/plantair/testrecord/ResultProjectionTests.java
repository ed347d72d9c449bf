package plantair.testrecord;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.DefaultApplicationArguments;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;
import plantair.pumpup.PumpUpMethods;
import plantair.pumpup.PumpUpResult;
import plantair.pumpup.Severity;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.Plant;

/** The results may be thrown away: they come back from the tests to the same digits. */
abstract class ResultProjectionTests {

    private static final String ALL = "select * from pump_up_result order by test_id, method_version";

    @Autowired
    private ResultProjection projection;

    @Autowired
    private PumpUpTests tests;

    @Autowired
    private StoredResults results;

    @Autowired
    private ResultsAtStart start;

    @Autowired
    private Database database;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private ApplicationContext context;

    @BeforeEach
    void someTests() {
        database.wipe();
        Plant plant = Plant.in(context);
        var site = plant.site();
        var compressor = plant.compressor(site);
        plant.receiver(site);
        plant.test(compressor, "2025-11-04T15:00:00Z", "60.2", "60.8", "60.5");
        plant.test(compressor, "2026-02-03T15:00:00Z", "61.2", "61.0", "61.7");
        plant.test(compressor, "2026-05-05T14:00:00Z", "50.0", "60.0", "72.0");
    }

    private List<Map<String, Object>> rows() {
        return jdbc.queryForList(ALL);
    }

    @Test
    void comesBackToTheSameDigitsAfterItWasDropped() {
        List<Map<String, Object>> before = rows();
        assertThat(before).hasSize(3);
        jdbc.update("delete from pump_up_result");

        long done = projection.rebuild(soFar -> {});

        assertThat(done).isEqualTo(3);
        assertThat(rows()).isEqualTo(before);
    }

    @Test
    void replacesAResultThatWasTamperedWith() {
        List<Map<String, Object>> before = rows();
        jdbc.update("update pump_up_result set free_air_m3_per_s = free_air_m3_per_s * 1.1 where test_id = 1");
        assertThat(rows()).isNotEqualTo(before);

        projection.rebuild(soFar -> {});

        assertThat(rows()).isEqualTo(before);
    }

    @Test
    void isRebuiltByTheAdministratorsCommand() {
        List<Map<String, Object>> before = rows();
        jdbc.update("update pump_up_result set detail = '{}'");

        start.run(new DefaultApplicationArguments("--rebuild-results"));

        assertThat(rows()).isEqualTo(before);
    }

    @Test
    void fillsWhatIsMissingAtTheStart() {
        List<Map<String, Object>> before = rows();
        jdbc.update("delete from pump_up_result where test_id = 2");

        start.run(new DefaultApplicationArguments());

        assertThat(rows()).isEqualTo(before);
    }

    @Test
    void tellsItsProgress() {
        List<Long> progress = new ArrayList<>();

        projection.rebuild(progress::add);

        assertThat(progress).containsExactly(3L);
    }

    @Test
    void readsBackTheResultThatTheMethodGave() {
        transaction.executeWithoutResult(status -> {
            PumpUpTest test = tests.findById(1).orElseThrow();
            StoredResult stored = results.findByKeyTestIdAndKeyMethodVersion(1, test.methodVersion())
                    .orElseThrow();

            PumpUpResult evaluated = PumpUpMethods.version(test.methodVersion()).evaluate(TestReadings.of(test));

            assertThat(projection.result(stored)).isEqualTo(evaluated.withoutWorking());
            assertThat(projection.working(test)).isEqualTo(evaluated.working());
        });
    }

    @Test
    void keepsNoFlowForRunsThatDrift() {
        StoredResult drifting = results.ofTests(List.of(3L)).get(0);

        assertThat(drifting.freeAir()).isEmpty();
        assertThat(drifting.severity()).contains(Severity.STOP);
    }
}

@OnH2
final class ResultProjectionOnH2Tests extends ResultProjectionTests {}

@OnPostgres
final class ResultProjectionOnPostgresTests extends ResultProjectionTests {}
