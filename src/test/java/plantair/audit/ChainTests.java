package plantair.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.io.FileSystemResource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.init.ResourceDatabasePopulator;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.register.Changes;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;

/** The chain under many hands, and at its beginning. */
abstract class ChainTests {

    private static final int HANDS = 8;

    @Autowired
    private AuditCheck check;

    @Autowired
    private Changes changes;

    @Autowired
    private Map<String, SmartInitializingSingleton> beginnings;

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private DataSource dataSource;

    @BeforeEach
    void startEmpty() {
        database.wipe();
    }

    private AuditReport report() {
        return check.check(read -> {});
    }

    /** Two machines, one gauge: tests, events, edits of one record and corrections that tell of that record too. */
    @Test
    void staysWholeWhenManyRecordAtOnce() throws InterruptedException, ExecutionException {
        database.recordPeople();
        AuditedPlant.record(site);
        List<Callable<Integer>> work = new ArrayList<>();
        for (int hand = 0; hand < HANDS; hand++) {
            int number = hand;
            work.add(() -> recordMuch(number));
        }
        long before = changes.count();
        var threads = Executors.newFixedThreadPool(HANDS);

        List<Future<Integer>> done = threads.invokeAll(work);
        threads.shutdown();

        long taken = 0;
        for (Future<Integer> one : done) {
            taken += one.get();
        }
        assertThat(changes.count()).isEqualTo(before + taken);
        assertThat(taken).isGreaterThan(HANDS * 6L);
        assertThat(report().faults()).isEmpty();
    }

    /** How many lines it added; an edit of what somebody else changed meanwhile is refused and adds none. */
    private int recordMuch(int hand) {
        int lines = 0;
        for (int round = 0; round < 4; round++) {
            AuditedPlant.send(site, AuditedPlant.tested("2026-0" + (round + 1) + "-1" + hand));
            AuditedPlant.send(site, AuditedPlant.event());
            String certificate = "X-" + hand + "-" + round;
            AuditedPlant.send(site, PlantForms.certificate(certificate, "2026-01-02"));
            Long old = jdbc.queryForObject(
                    "select max(id) from calibration where certificate_number = ?", Long.class, certificate);
            AuditedPlant.send(
                    site,
                    PlantForms.certificate(certificate, "2026-01-03")
                            .at("/instruments/1/calibrations/" + old + "/supersede")
                            .with("edit.reason", "wrong day"));
            lines += 5 + edit(hand + " " + round);
        }
        return lines;
    }

    private int edit(String note) {
        String version = jdbc.queryForObject("select version from instrument where id = 1", String.class);
        SentForm.Answer answer = PlantForms.GAUGE
                .at("/instruments/1")
                .with("note", note)
                .with("edit.version", version)
                .with("edit.reason", "seen")
                .post(site);
        assertThat(answer.status()).isIn(302, 409);
        return answer.status() == 302 ? 1 : 0;
    }

    private void startAgain() {
        beginnings.get("chainAtStart").afterSingletonsInstantiated();
    }

    @Test
    void takesInTheDemoPlantAtTheFirstStartAndNothingAtTheSecond() {
        new ResourceDatabasePopulator(
                        false, false, "UTF-8", new FileSystemResource(Path.of("db/demo/R__demo_plant.sql")))
                .execute(dataSource);
        assertThat(report().isSound()).isFalse();
        jdbc.update("update chain_end set begun = false");

        startAgain();

        AuditReport first = report();
        assertThat(first.faults()).isEmpty();
        assertThat(first.records()).isGreaterThan(144);
        startAgain();
        assertThat(report()).isEqualTo(first);
    }

    @Test
    void startsThoughARecordOfAnOldLineIsGone() {
        jdbc.update(
                "insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)"
                        + " values (timestamp with time zone '2026-01-01 00:00:00+00', 'Ann', 'SITE', 9, 'x', 'x', 'x')");
        jdbc.update("update chain_end set begun = false");

        startAgain();

        assertThat(report().faults()).containsExactly(new Fault(Fault.Code.RECORD_MISSING, 1, "SITE 9"));
    }

    @Test
    void takesInNothingOnceItIsBegun() {
        AuditedPlant.send(site, PlantForms.SITE);
        jdbc.update("insert into site (name, zone, elevation, note, version) values ('x', 'UTC', '1 m', '', 0)");
        jdbc.update("update chain_end set begun = false");

        startAgain();

        assertThat(report().faults())
                .extracting(Fault::code, Fault::record)
                .contains(org.assertj.core.api.Assertions.tuple(Fault.Code.RECORD_WITHOUT_LINE, "SITE 2"));
    }
}

@OnH2
final class ChainOnH2Tests extends ChainTests {}

@OnPostgres
final class ChainOnPostgresTests extends ChainTests {}
