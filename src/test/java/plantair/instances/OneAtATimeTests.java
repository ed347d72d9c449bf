package plantair.instances;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;

/** Two instances on one database; the processes themselves are in {@code TwoInstancesTests}. */
abstract class OneAtATimeTests {

    private static final String WORK = "work of a test";

    @Autowired
    private OneAtATime locks;

    @Autowired
    private SharedFiles files;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private Database database;

    @Autowired
    private TransactionTemplate transaction;

    @TempDir
    private Path folder;

    private OneAtATime other;

    @BeforeEach
    void start() {
        database.wipe();
        other = new OneAtATime(jdbc, Clock.systemUTC());
    }

    @AfterEach
    void stop() {
        other.destroy();
        jdbc.update("update shedlock set lock_until = locked_at where name = ?", WORK);
    }

    private boolean isBeingDone() {
        return !jdbc.queryForList("select 1 where " + OneAtATime.isBeingDone(WORK))
                .isEmpty();
    }

    @Test
    void letsNobodyBeginWhileAnotherIsAtIt() {
        List<Boolean> seen = new ArrayList<>();

        boolean done = locks.tryTo(WORK, () -> {
            seen.add(isBeingDone());
            seen.add(other.tryTo(WORK, () -> {}));
            seen.add(locks.tryTo(WORK, () -> {}));
            seen.add(other.tryTo("other work", () -> {}));
        });

        assertThat(done).isTrue();
        assertThat(seen).containsExactly(true, false, false, true);
        assertThat(isBeingDone()).isFalse();
        assertThat(other.tryTo(WORK, () -> {})).isTrue();
    }

    @Test
    @Timeout(60)
    void findsItsWayBackWhenSomebodyEmptiedTheTable() {
        assertThat(locks.tryTo(WORK, () -> {})).isTrue();
        jdbc.update("delete from shedlock where name = ?", WORK);

        locks.inTurn(WORK, () -> assertThat(isBeingDone()).isTrue());
    }

    @Test
    @Timeout(60)
    void waitsForItsTurn() {
        List<String> order = Collections.synchronizedList(new ArrayList<>());
        var begun = new CountDownLatch(1);
        var go = new CountDownLatch(1);
        CompletableFuture<Boolean> first = CompletableFuture.supplyAsync(() -> locks.tryTo(WORK, () -> {
            begun.countDown();
            await(go);
            order.add("first");
        }));
        await(begun);
        CompletableFuture<Void> second =
                CompletableFuture.runAsync(() -> other.inTurn(WORK, () -> order.add("second")));
        pause();
        go.countDown();

        second.join();
        assertThat(first.join()).isTrue();
        assertThat(order).containsExactly("first", "second");
    }

    @Test
    void takesOverFromOneThatSaysNoMoreThatItIsAtIt() {
        locks.tryTo(WORK, () -> {
            String end = database.isPostgres() ? "timezone('utc', current_timestamp)" : "current_timestamp";
            jdbc.update("update shedlock set lock_until = " + end + " + interval '1' second where name = ?", WORK);
            assertThat(isBeingDone()).isTrue();
            assertThat(other.tryTo(WORK, () -> {})).isFalse();

            other.inTurn(WORK, () -> assertThat(isBeingDone()).isTrue());
        });
    }

    @Test
    void letsGoWhenTheWorkFails() {
        try {
            locks.tryTo(WORK, () -> {
                throw new IllegalStateException("planted");
            });
        } catch (IllegalStateException planted) {
            assertThat(other.tryTo(WORK, () -> {})).isTrue();
            return;
        }
        throw new AssertionError("the failure was swallowed");
    }

    @Test
    void handsOutAFileByteByByte() throws IOException {
        byte[] bytes = new byte[1_200_000];
        new Random(7).nextBytes(bytes);
        Path file = Files.write(folder.resolve("sent"), bytes);
        UUID id = UUID.randomUUID();
        keep(id, file, Duration.ofHours(1));
        keep(UUID.randomUUID(), file, Duration.ofSeconds(-1));

        files.expire();

        assertThat(jdbc.queryForList("select id from shared_file", UUID.class)).containsExactly(id);
        assertThat(jdbc.queryForObject("select max(octet_length(bytes)) from shared_piece", Integer.class))
                .isLessThan(1_000_000);
        Path copy = files.fetch(id).orElseThrow();
        assertThat(copy).hasBinaryContent(bytes);
        Files.delete(copy);
        files.forget(id);
        assertThat(files.fetch(id)).isEmpty();
        assertThat(jdbc.queryForObject("select count(*) from shared_piece", Integer.class))
                .isZero();
    }

    private void keep(UUID id, Path file, Duration length) {
        transaction.executeWithoutResult(status -> {
            try {
                files.keep(id, file, length);
            } catch (IOException gone) {
                throw new IllegalStateException(gone);
            }
        });
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
            Thread.sleep(400);
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }
}

@OnH2
final class OneAtATimeOnH2Tests extends OneAtATimeTests {}

@OnPostgres
final class OneAtATimeOnPostgresTests extends OneAtATimeTests {}
