package plantair.backup;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plantair.testing.AppProcess;
import plantair.testing.Client;
import plantair.testing.People;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;

/**
 * The demo plant with records of its own, backed up by the command while somebody writes, restored into a new place: real
 * processes, H2. The exports before and after are compared byte by byte.
 */
final class BackupRoundTripTests {

    private static final String DEMO = "--spring.flyway.locations=classpath:db/migration,classpath:db/demo";
    private static final String DEMO_TESTS = "/export/tests.csv?to=2026-06-30";
    private static final String[] SECONDS = {"62.2", "62.8", "62.5"};

    @TempDir
    private Path original;

    @TempDir
    private Path elsewhere;

    @TempDir
    private Path restored;

    private final AtomicInteger acknowledged = new AtomicInteger();
    private final AtomicBoolean stopped = new AtomicBoolean();

    /** What was there: the demo's tests, all tests later, and how many of these were acknowledged around the backup. */
    private record Original(String demo, List<String> written, int before, int after) {}

    @Test
    void restoresWhatWasThereWhenItWasMade() throws Exception {
        Original was = backedUp();
        String backup = onlyBackup().toString();

        var done = AppProcess.runOnH2File(restored, "restore", backup);

        assertThat(done.status()).as(done.log()).isZero();
        String results = results();
        compare(was);
        var checked = AppProcess.runOnH2File(restored, "verify", DEMO);
        assertThat(checked.status()).as(checked.log()).isZero();
        assertThat(checked.log()).contains("Every record is as it was recorded");

        var rebuilt = AppProcess.runOnH2File(restored, "--rebuild-results", DEMO);
        assertThat(rebuilt.status()).as(rebuilt.log()).isZero();
        assertThat(results()).as("computed anew, the same to the digit").isEqualTo(results);

        var again = AppProcess.runOnH2File(restored, "restore", backup);
        assertThat(again.status()).isEqualTo(1);
        assertThat(again.log()).contains("nothing is overwritten");
        assertThat(results()).isEqualTo(results);
    }

    private Original backedUp() throws Exception {
        try (AppProcess app = AppProcess.onH2File(original, DEMO)) {
            Client ann = Client.first(app);
            SentForm test = testOfANewMachine(ann);
            var writer = CompletableFuture.runAsync(() -> write(ann, test));
            while (acknowledged.get() < 2) {
                Thread.sleep(10);
            }

            int before = acknowledged.get();
            var made = AppProcess.runOnH2File(original, "backup", "--to=" + elsewhere);
            int after = acknowledged.get() + 1;

            assertThat(made.status()).as(made.log()).isZero();
            assertThat(after).as("somebody wrote meanwhile").isGreaterThan(before + 1);
            stopped.set(true);
            writer.join();
            String written = ann.page("/export/tests.csv?from=2026-07-01");
            return new Original(ann.page(DEMO_TESTS), lines(written), before, after);
        }
    }

    private SentForm testOfANewMachine(Client ann) {
        String site = number(ann.saved(PlantForms.SITE.with("name", "Written to")));
        String machine = ann.saved(PlantForms.COMPRESSOR.with("site", site).with("tag", "W-1"));
        String receiver =
                number(ann.saved(PlantForms.RECEIVER.with("site", site).with("tag", "WR-1")));
        return PlantForms.pumpUp("2026-07-01", SECONDS)
                .at(machine + "/tests")
                .with("receivers", receiver)
                .with("pipes", "");
    }

    private static String number(String path) {
        return path.substring(path.lastIndexOf('/') + 1);
    }

    private void write(Client ann, SentForm test) {
        while (!stopped.get()) {
            ann.saved(test.with("submission", UUID.randomUUID().toString()).with("notes", "written " + acknowledged));
            acknowledged.incrementAndGet();
        }
    }

    private void compare(Original was) throws Exception {
        try (AppProcess app = AppProcess.onH2File(restored, DEMO)) {
            Client ann = Client.signedIn(app.baseUrl(), People.ANN.username(), People.PASSWORD);
            assertThat(ann.page(DEMO_TESTS)).isEqualTo(was.demo());
            List<String> kept = lines(ann.page("/export/tests.csv?from=2026-07-01"));
            int tests = (kept.size() - 1) / SECONDS.length;
            assertThat(tests)
                    .as("everything acknowledged before it, and nothing begun after it")
                    .isBetween(was.before(), was.after());
            assertThat(kept)
                    .as("whole tests, as they were")
                    .isEqualTo(was.written().subList(0, 1 + tests * SECONDS.length));
        }
    }

    private Path onlyBackup() throws IOException {
        try (Stream<Path> files = Files.list(elsewhere)) {
            return files.filter(file -> file.toString().endsWith(".sql.gz"))
                    .findAny()
                    .orElseThrow();
        }
    }

    private static List<String> lines(String csv) {
        return List.of(csv.split("\r\n"));
    }

    /** Every column of every stored result. */
    private String results() throws SQLException {
        String url =
                "jdbc:h2:" + restored.resolve("plant-air") + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;IFEXISTS=TRUE";
        List<String> rows = new ArrayList<>();
        try (var connection = DriverManager.getConnection(url, "sa", "");
                var row = connection
                        .createStatement()
                        .executeQuery("select * from pump_up_result order by test_id, method_version")) {
            while (row.next()) {
                for (int column = 1; column <= row.getMetaData().getColumnCount(); column++) {
                    rows.add(row.getString(column));
                }
            }
        }
        assertThat(rows).isNotEmpty();
        return String.join("\n", rows);
    }
}
