package plantair.register;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.DefaultApplicationArguments;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;
import plantair.audit.AuditCheck;
import plantair.equipment.Compressor;
import plantair.history.MachineStates;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.Plant;
import plantair.testrecord.ResultsAtStart;

/** What is done at the start is done once, also by two instances that start at the same moment. */
abstract class StartedTogetherTests {

    private static final int TESTS = 30;

    /** Long enough for both to come to where they wait, and less than H2 waits for a row. */
    private static final long HEAD_START_MS = 700;

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Database database;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private ChainAtStart chain;

    @Autowired
    private AuditCheck audit;

    @Autowired
    private ResultsAtStart results;

    @Autowired
    private MachineStates states;

    @BeforeEach
    void plant() {
        database.wipe();
        database.recordPeople();
        Plant plant = Plant.in(context);
        var site = plant.site();
        Compressor compressor = plant.compressor(site);
        plant.receiver(site);
        for (int test = 0; test < TESTS; test++) {
            plant.plan(compressor).record();
        }
    }

    @Test
    void linksEachLineOnce() throws Exception {
        jdbc.update("update change_record set chain_number = null, content_digest = null, previous_digest = null,"
                + " digest = null");
        jdbc.update("update chain_end set chain_number = 0, digest = ?, begun = false", Changes.BEGINNING);
        long records = count("pump_up_test") + count("site") + count("compressor") + count("receiver");

        CompletableFuture<Void> both = transaction.execute(status -> {
            jdbc.queryForList("select 1 from chain_end for update");
            CompletableFuture<Void> begun = twoAtOnce(chain::afterSingletonsInstantiated);
            pause();
            return begun;
        });
        both.join();

        assertThat(audit.check(read -> {}).faults()).isEmpty();
        assertThat(count("change_record")).isEqualTo(records + count("account"));
        assertThat(jdbc.queryForObject("select chain_number from chain_end", Long.class))
                .isEqualTo(count("change_record"));
    }

    @Test
    void computesEachResultOnce() {
        ApplicationArguments none = new DefaultApplicationArguments();
        jdbc.update("delete from machine_state");
        jdbc.update("delete from pump_up_result");

        twoAtOnce(() -> {
                    results.run(none);
                    states.fill();
                })
                .join();

        assertThat(count("pump_up_result")).isEqualTo(TESTS);
        assertThat(count("machine_state")).isEqualTo(1);
    }

    private static CompletableFuture<Void> twoAtOnce(Runnable work) {
        var both = new CountDownLatch(2);
        List<CompletableFuture<Void>> begun = Stream.of(1, 2)
                .map(instance -> CompletableFuture.runAsync(
                        () -> {
                            both.countDown();
                            await(both);
                            work.run();
                        },
                        task -> new Thread(task).start()))
                .toList();
        return CompletableFuture.allOf(begun.toArray(CompletableFuture[]::new));
    }

    private long count(String table) {
        return jdbc.queryForObject("select count(*) from " + table, Long.class);
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }

    private static void pause() {
        try {
            Thread.sleep(HEAD_START_MS);
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }
}

@OnH2
final class StartedTogetherOnH2Tests extends StartedTogetherTests {}

@OnPostgres
final class StartedTogetherOnPostgresTests extends StartedTogetherTests {}
