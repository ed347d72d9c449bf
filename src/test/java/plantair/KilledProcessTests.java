package plantair;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plantair.testing.AppProcess;

/** A save that was acknowledged is there after the process was killed (SIGKILL) a moment later; a real process, H2. */
final class KilledProcessTests {

    private static final int ROUNDS = 3;

    private final HttpClient http = HttpClient.newHttpClient();

    private HttpResponse<String> post(AppProcess app, String path, Map<String, String> form)
            throws IOException, InterruptedException {
        String body = form.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
        return http.send(
                HttpRequest.newBuilder(URI.create(app.baseUrl() + path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString(body))
                        .build(),
                BodyHandlers.ofString());
    }

    private String get(AppProcess app, String path) throws IOException, InterruptedException {
        HttpResponse<String> response = http.send(
                HttpRequest.newBuilder(URI.create(app.baseUrl() + path)).build(), BodyHandlers.ofString());
        assertThat(response.statusCode()).as(path).isEqualTo(200);
        return response.body();
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static Map<String, String> test(String note) {
        Map<String, String> form = new LinkedHashMap<>(Map.of(
                "submission", UUID.randomUUID().toString(),
                "date", "2026-05-12",
                "time", "14:05",
                "tester", "Ann",
                "airTemperature", "NOT_MEASURED",
                "receivers", "1",
                "intakeTemperature.number", "75",
                "intakeTemperature.unit", "[degF]",
                "notes", note));
        String[] seconds = {"62.2", "62.8", "62.5"};
        for (int i = 0; i < seconds.length; i++) {
            String run = "runs[" + i + "].";
            form.put(run + "startPressure.number", "140");
            form.put(run + "startPressure.unit", "[psi]");
            form.put(run + "stopPressure.number", "172");
            form.put(run + "stopPressure.unit", "[psi]");
            form.put(run + "elapsed.number", seconds[i]);
            form.put(run + "elapsed.unit", "s");
        }
        return form;
    }

    @Test
    void losesNothingThatWasAcknowledged(@TempDir Path directory) throws IOException, InterruptedException {
        try (AppProcess app = AppProcess.onH2File(directory)) {
            register(app);
            for (int round = 1; round <= ROUNDS; round++) {
                String note = "saved just before kill " + round;
                HttpResponse<String> saved = post(app, "/compressors/1/tests", test(note));
                assertThat(saved.statusCode()).as(saved.body()).isEqualTo(302);

                app.killHard();
                app.restart();

                assertThat(URI.create(saved.headers().firstValue("Location").orElseThrow())
                                .getPath())
                        .as("numbers without a gap")
                        .isEqualTo("/tests/" + round);
                assertThat(get(app, "/tests/" + round)).contains(note, "Free air delivered");
            }
            assertThat(get(app, "/compressors/1")).contains("C-1");
        }
    }

    private void register(AppProcess app) throws IOException, InterruptedException {
        Map<String, String> site = Map.of(
                "name", "North works",
                "zone", "America/Chicago",
                "elevation.number", "600",
                "elevation.unit", "[ft_i]",
                "edit.who", "Ann");
        assertThat(post(app, "/sites", site).statusCode()).isEqualTo(302);
        Map<String, String> compressor = Map.of(
                "site", "1",
                "tag", "C-1",
                "kind", "PISTON",
                "stages", "2",
                "drive", "BELT",
                "control", "START_STOP",
                "edit.who", "Ann");
        assertThat(post(app, "/compressors", compressor).statusCode()).isEqualTo(302);
        Map<String, String> receiver = Map.of(
                "site", "1",
                "tag", "R-1",
                "volume.number", "120",
                "volume.unit", "[gal_us]",
                "volumeKnownBy", "PLATE",
                "mawp.number", "200",
                "mawp.unit", "[psi]",
                "reliefSet.number", "190",
                "reliefSet.unit", "[psi]",
                "edit.who", "Ann");
        assertThat(post(app, "/receivers", receiver).statusCode()).isEqualTo(302);
    }
}
