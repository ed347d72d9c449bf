package plantair;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import plantair.testing.AppProcess;
import plantair.testing.Client;
import plantair.testing.OwnPostgres;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;

/**
 * Two real processes on one database, both started at once on an empty one. One is killed (SIGKILL) while people write
 * through both and while it takes in a log: they go on at the other, signed in as they were, and send again what got no
 * answer; all that was acknowledged is there once, nothing of the log is, and the other takes its work over.
 */
final class TwoInstancesTests {

    private static final int PEOPLE = 4;
    private static final int ENOUGH = 8;
    private static final int LOGGED = 600;
    private static final int SOME_OF_THEM = 100;
    private static final long PATIENCE_MS = 120_000;

    @TempDir
    private Path folder;

    private final Map<String, String> acknowledged = new ConcurrentHashMap<>();
    private final Queue<String> unexpected = new ConcurrentLinkedQueue<>();
    private final List<Thread> people = new ArrayList<>();
    private volatile boolean stopped;

    @Test
    void loseNothingWhenOneIsKilledUnderLoad() throws Exception {
        try (var server = OwnPostgres.start(folder.resolve("server"))) {
            var database = new JdbcTemplate(new DriverManagerDataSource(server.jdbcUrl(), server.user(), ""));
            CompletableFuture<AppProcess> starting = CompletableFuture.supplyAsync(() -> instance(server, "one"));
            try (AppProcess other = instance(server, "two");
                    AppProcess killed = starting.join()) {
                Client ann = Client.first(killed, other);
                Client atKilled = ann.beside(killed.baseUrl());
                for (SentForm form : List.of(PlantForms.SITE, PlantForms.COMPRESSOR, PlantForms.RECEIVER)) {
                    ann.saved(form);
                }
                String upload = uploaded(atKilled);

                startToWrite(ann, atKilled);
                await(() -> acknowledged.size() >= ENOUGH);
                atKilled.post(upload, Map.of());
                await(() -> number(
                                database,
                                "select coalesce(max(progress), 0) from import_job" + " where stage = 'RECORDING'")
                        >= SOME_OF_THEM);
                killed.killHard();
                int before = acknowledged.size();
                await(() -> acknowledged.size() >= before + ENOUGH);
                stopWriting();

                assertThat(unexpected).isEmpty();
                everyAcknowledgedTestIsThereOnce(database);
                theImportBrokeOffAndIsBegunAgain(ann, upload, database);
                theChainIsSound(ann);
            }
        }
    }

    private AppProcess instance(OwnPostgres server, String name) {
        try {
            Path directory = Files.createDirectory(folder.resolve(name));
            return AppProcess.onDatabase(directory, server.jdbcUrl(), server.user());
        } catch (IOException full) {
            throw new UncheckedIOException(full);
        }
    }

    /** Half of the people begin at either instance; without an answer each goes on at the other. */
    private void startToWrite(Client... instances) {
        for (int person = 0; person < PEOPLE; person++) {
            int first = person % instances.length;
            var thread = new Thread(() -> write(instances, first));
            thread.start();
            people.add(thread);
        }
    }

    private void write(Client[] instances, int first) {
        int at = first;
        while (!stopped) {
            SentForm test = Writers.test("of person " + first);
            HttpResponse<String> answer = null;
            for (int tries = 0; answer == null && tries < instances.length; tries++) {
                try {
                    answer = instances[at].post(test.address(), test.fields());
                } catch (UncheckedIOException killed) {
                    at = (at + 1) % instances.length;
                }
            }
            if (answer == null || answer.statusCode() != 302) {
                unexpected.add(answer == null ? "no answer" : answer.statusCode() + "\n" + answer.body());
                return;
            }
            String page = URI.create(answer.headers().firstValue("Location").orElseThrow())
                    .getPath();
            acknowledged.put(test.fields().get("submission"), page.substring(page.lastIndexOf('/') + 1));
        }
    }

    private void stopWriting() throws InterruptedException {
        stopped = true;
        for (Thread person : people) {
            person.join();
        }
    }

    /** Everybody's last form was answered, so there is nothing else either. */
    private void everyAcknowledgedTestIsThereOnce(JdbcTemplate database) {
        Map<String, String> there = new ConcurrentHashMap<>();
        database.query("select cast(submission as varchar), cast(id as varchar) from pump_up_test", row -> {
            there.put(row.getString(1), row.getString(2));
        });
        assertThat(there).isEqualTo(acknowledged);
        assertThat(number(database, "select count(*) from pump_up_test")).isEqualTo(acknowledged.size());
        assertThat(number(database, "select count(*) from pump_up_result")).isEqualTo(acknowledged.size());
    }

    private void theImportBrokeOffAndIsBegunAgain(Client ann, String upload, JdbcTemplate database) {
        await(() -> !ann.page(upload).contains("Taking it in"));
        assertThat(ann.page(upload)).contains("Broken off", "Nothing of the file was taken in", "Begin again");

        ann.post(upload, Map.of());

        await(() -> ann.page(upload).contains("Done: " + LOGGED + " tests were taken in"));
        assertThat(number(database, "select count(*) from pump_up_test")).isEqualTo(acknowledged.size() + LOGGED);
        assertThat(number(database, "select count(*) from shared_file")).isZero();
    }

    private static void theChainIsSound(Client ann) {
        ann.post("/audit/check", Map.of());
        await(() -> ann.get("/audit").headers().firstValue("Refresh").isEmpty());
        assertThat(ann.page("/audit")).contains("every record is as it was recorded");
    }

    private static String uploaded(Client client) {
        var text = new StringBuilder(
                "test,site,compressor,date,time,tester,receivers,start_pressure,start_pressure_unit,"
                        + "stop_pressure,stop_pressure_unit,elapsed,elapsed_unit,intake_temperature,intake_temperature_unit\n");
        for (int test = 0; test < LOGGED; test++) {
            text.append("t" + test + ",North works,C-1,"
                    + LocalDate.of(2015, 1, 1).plusDays(test) + ",14:30,Ann,R-1,140,psi,172,psi,60,s,70,°F\n");
        }
        byte[] log = text.toString().getBytes(StandardCharsets.UTF_8);
        HttpResponse<String> answer = client.upload("/import", Map.of(), "log.csv", log);
        String upload = URI.create(answer.headers().firstValue("Location").orElseThrow())
                .getPath();
        await(() -> client.page(upload).contains("Import these " + LOGGED + " tests"));
        return upload;
    }

    private static long number(JdbcTemplate database, String sql) {
        return database.queryForObject(sql, Long.class);
    }

    private static void await(BooleanSupplier condition) {
        long end = System.nanoTime() + PATIENCE_MS * 1_000_000;
        while (!condition.getAsBoolean()) {
            if (System.nanoTime() > end) {
                throw new AssertionError("it did not come about");
            }
            try {
                Thread.sleep(20);
            } catch (InterruptedException stopped) {
                throw new IllegalStateException(stopped);
            }
        }
    }
}
