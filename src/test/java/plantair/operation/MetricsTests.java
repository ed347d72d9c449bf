package plantair.operation;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plantair.testing.AppProcess;
import plantair.testing.Client;
import plantair.testing.PlantForms;

/** Scrapes a real process that has its settings from the environment. */
final class MetricsTests {

    private static final String PATH = "/actuator/prometheus";
    private static final String TOKEN = "fourteen-brown-owls-on-a-gate";
    private static final Pattern LABEL = Pattern.compile("=\"([^\"]*)\"");

    private static AppProcess app;
    private static Client ann;

    @BeforeAll
    static void useIt(@TempDir Path folder) {
        app = AppProcess.onH2File(
                folder,
                Map.of("PLANTAIR_METRICS_TOKEN", TOKEN, "PLANTAIR_ATTACHMENTS_MOST_MEGABYTES", "3"),
                AppProcess.WHOLE);
        ann = Client.first(app);
        ann.saved(PlantForms.SITE.with("name", "Hollow valley works"));
        ann.page("/sites/1");
        ann.get("/sites/987654");
        ann.get("/hollow/valley");
    }

    @AfterAll
    static void stop() {
        app.close();
    }

    private static String figures() {
        var answer = ann.get(PATH, "Authorization", "Bearer " + TOKEN);
        assertThat(answer.statusCode()).isEqualTo(200);
        return answer.body();
    }

    @Test
    void hasTimingsAndTheMachineAndThePoolAndOurOwn() {
        assertThat(figures())
                .containsPattern("http_server_requests_seconds_count\\{[^}]*uri=\"/sites/\\{id}\"")
                .containsPattern("http_server_requests_seconds_bucket\\{[^}]*le=\"0.25\"")
                .contains(
                        "jvm_memory_used_bytes",
                        "jvm_gc_max_data_size_bytes",
                        "process_cpu_usage",
                        "logback_events_total")
                .contains("hikaricp_connections_active", "hikaricp_connections_pending")
                .containsPattern("(?m)^plantair_changes \\d")
                .containsPattern("(?m)^plantair_machines_waiting 0")
                .containsPattern("(?m)^plantair_disk_free_bytes [1-9]")
                .containsPattern("(?m)^plantair_backup_age_seconds NaN");
    }

    @Test
    void namesNobodyAndNothingOfThePlant() {
        assertThat(LABEL.matcher(figures()).results().map(label -> label.group(1)))
                .hasSizeGreaterThan(100)
                .allSatisfy(label -> assertThat(label)
                        .doesNotContainIgnoringCase("hollow")
                        .doesNotMatch("(?i).*\\bann\\b.*")
                        .doesNotContain("987654", "127.0.0.1"));
        assertThat(LABEL.matcher("x{a=\"Hollow valley\"}").results().map(MatchResult::group))
                .containsExactly("=\"Hollow valley\"");
    }

    @Test
    void isClosedToWhoeverHasNoToken() {
        var stranger = Client.stranger(app.baseUrl());

        for (String sent : new String[] {"Bearer ", "Bearer " + TOKEN + "x", "Basic " + TOKEN, TOKEN}) {
            assertThat(stranger.get(PATH, "Authorization", sent).statusCode())
                    .as(sent)
                    .isEqualTo(401);
        }
        assertThat(stranger.get(PATH).statusCode()).isEqualTo(401);
        assertThat(stranger.get(PATH).body()).isEmpty();
        assertThat(ann.get(PATH).statusCode()).as("a person is no program").isEqualTo(401);
        assertThat(ann.get("/actuator/metrics", "Authorization", "Bearer " + TOKEN)
                        .statusCode())
                .isEqualTo(404);
        assertThat(ann.get("/changes", "Authorization", "Bearer " + TOKEN).statusCode())
                .as("the token opens nothing else, and does not close it")
                .isEqualTo(200);
        assertThat(stranger.get("/changes", "Authorization", "Bearer " + TOKEN).statusCode())
                .isEqualTo(302);
    }

    @Test
    void tookTheSettingsOfItsEnvironment() {
        assertThat(ann.page("/attachments/of/SITE/1")).contains("3 MB").doesNotContain("10 MB");
    }
}
