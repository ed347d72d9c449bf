package plantair;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plantair.testing.AppProcess;
import plantair.testing.Client;

/** A save that was acknowledged is there after the process was killed (SIGKILL) a moment later; a real process, H2. The session too: nobody signs in again. */
final class KilledProcessTests {

    private static final int ROUNDS = 3;

    private static String get(Client ann, String path) {
        HttpResponse<String> response = ann.get(path);
        assertThat(response.statusCode()).as(path).isEqualTo(200);
        return response.body();
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
    void losesNothingThatWasAcknowledged(@TempDir Path directory) {
        try (AppProcess app = AppProcess.onH2File(directory)) {
            Client ann = Client.first(app);
            register(ann);
            for (int round = 1; round <= ROUNDS; round++) {
                String note = "saved just before kill " + round;
                HttpResponse<String> saved = ann.post("/compressors/1/tests", test(note));
                assertThat(saved.statusCode()).as(saved.body()).isEqualTo(302);

                app.killHard();
                app.restart();
                ann.moveTo(app.baseUrl());

                assertThat(URI.create(saved.headers().firstValue("Location").orElseThrow())
                                .getPath())
                        .as("numbers without a gap")
                        .isEqualTo("/tests/" + round);
                assertThat(get(ann, "/tests/" + round)).contains(note, "Free air delivered");
            }
            assertThat(get(ann, "/compressors/1")).contains("C-1");
        }
    }

    private static void register(Client ann) {
        Map<String, String> site = Map.of(
                "name", "North works",
                "zone", "America/Chicago",
                "elevation.number", "600",
                "elevation.unit", "[ft_i]");
        assertThat(ann.post("/sites", site).statusCode()).isEqualTo(302);
        Map<String, String> compressor = Map.of(
                "site", "1",
                "tag", "C-1",
                "kind", "PISTON",
                "stages", "2",
                "drive", "BELT",
                "control", "START_STOP");
        assertThat(ann.post("/compressors", compressor).statusCode()).isEqualTo(302);
        Map<String, String> receiver = Map.of(
                "site", "1",
                "tag", "R-1",
                "volume.number", "120",
                "volume.unit", "[gal_us]",
                "volumeKnownBy", "PLATE",
                "mawp.number", "200",
                "mawp.unit", "[psi]",
                "reliefSet.number", "190",
                "reliefSet.unit", "[psi]");
        assertThat(ann.post("/receivers", receiver).statusCode()).isEqualTo(302);
    }
}
