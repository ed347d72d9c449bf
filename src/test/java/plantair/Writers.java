package plantair;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import plantair.testing.AppProcess;
import plantair.testing.Client;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;

/** Two people who save tests one after the other, and what was acknowledged to them. */
final class Writers {

    private static final int PEOPLE = 2;
    private static final int RUNS = 3;

    private final Client client;
    private final Map<String, String> notesByTest = new ConcurrentHashMap<>();
    private final AtomicInteger sent = new AtomicInteger();
    private final List<Thread> threads = new ArrayList<>();
    private volatile boolean stopped;

    Writers(Client client) {
        this.client = client;
    }

    static SentForm test(String note) {
        return PlantForms.pumpUp("2026-05-12", "62.2", "62.8", "62.5")
                .with("pipes", "")
                .with("submission", UUID.randomUUID().toString())
                .with("notes", note);
    }

    void start() {
        stopped = false;
        for (int person = 0; person < PEOPLE; person++) {
            var thread = new Thread(this::write);
            thread.start();
            threads.add(thread);
        }
    }

    private void write() {
        try {
            while (!stopped) {
                String note = "note " + sent.incrementAndGet();
                SentForm test = test(note);
                HttpResponse<String> answer = client.post(test.address(), test.fields());
                if (answer.statusCode() == 302) {
                    String page = answer.headers().firstValue("Location").orElseThrow();
                    notesByTest.put(page.substring(page.lastIndexOf('/') + 1), note);
                }
            }
        } catch (UncheckedIOException | AssertionError killed) {
            stopped = true;
        }
    }

    int acknowledged() {
        return notesByTest.size();
    }

    void awaitMoreThan(int acknowledged) throws InterruptedException {
        while (notesByTest.size() <= acknowledged) {
            Thread.sleep(10);
        }
    }

    void stop() throws InterruptedException {
        stopped = true;
        for (Thread thread : threads) {
            thread.join();
        }
        threads.clear();
    }

    /** Every acknowledged test is in the export with its note, and every test is whole and has its result. */
    void check(AppProcess app, String when) throws IOException {
        Map<String, List<CSVRecord>> rows = new HashMap<>();
        String csv = client.page("/export/tests.csv").substring(1);
        var format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (var parser = format.parse(new StringReader(csv))) {
            parser.forEach(row -> rows.computeIfAbsent(row.get("test_id"), id -> new ArrayList<>())
                    .add(row));
        }
        notesByTest.forEach((test, note) -> assertThat(rows.getOrDefault(test, List.of()))
                .as("%s: test %s", when, test)
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.get("notes")).isEqualTo(note)));
        rows.forEach((test, runs) -> {
            assertThat(runs).as("%s: runs of test %s", when, test).hasSize(RUNS);
            assertThat(runs.get(0).get("free_air_m3_per_s")).isNotEmpty();
        });
        assertThat(app.log()).as(when).doesNotContain("missing results");
    }
}
