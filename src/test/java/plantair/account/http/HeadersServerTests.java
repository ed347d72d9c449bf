package plantair.account.http;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.testing.Client;
import plantair.testing.OnH2;
import plantair.testing.People;

/** The headers of every sort of answer, and what is said about the inside. */
@OnH2
final class HeadersServerTests {

    @LocalServerPort
    private int port;

    @Autowired
    private MockMvcTester site;

    private Client ann;

    @BeforeEach
    void signIn() {
        ann = Client.signedIn("http://127.0.0.1:" + port, "ann", People.PASSWORD);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/tests",
                "/nowhere",
                "/sites/999999",
                "/login",
                "/css/app.css",
                "/api/v1/openapi.json",
                "/actuator/health"
            })
    void protectsEveryAnswer(String path) {
        var headers = ann.get(path).headers();

        assertThat(headers.firstValue("Content-Security-Policy").orElseThrow())
                .contains("default-src 'self'", "object-src 'none'", "base-uri 'none'", "frame-ancestors 'none'")
                .doesNotContain("unsafe");
        assertThat(headers.firstValue("X-Content-Type-Options")).contains("nosniff");
        assertThat(headers.firstValue("X-Frame-Options")).contains("DENY");
        assertThat(headers.firstValue("Referrer-Policy")).contains("same-origin");
        assertThat(headers.firstValue("Permissions-Policy")).isPresent();
        assertThat(headers.firstValue("Strict-Transport-Security"))
                .as("not over plain HTTP")
                .isEmpty();
        assertThat(headers.firstValue("Server")).isEmpty();
        assertThat(headers.firstValue("X-Powered-By")).isEmpty();
        assertThat(headers.firstValue("Cache-Control").orElse("").contains("no-store"))
                .isEqualTo(!path.startsWith("/css"));
    }

    @Test
    void asksForTlsForAYearOverTlsOnly() {
        assertThat(site.get().uri("https://localhost/tests"))
                .hasHeader("Strict-Transport-Security", "max-age=31536000");
    }

    @Test
    void tellsHealthAndNothingMore() {
        var stranger = Client.stranger("http://127.0.0.1:" + port);

        assertThat(stranger.get("/actuator/health").body())
                .startsWith("{\"groups\":[\"liveness\",\"readiness\"],\"status\":\"UP\"")
                .doesNotContain("components", "db");
        assertThat(stranger.get("/actuator/health/liveness").body()).isEqualTo("{\"status\":\"UP\"}");
        assertThat(stranger.get("/actuator/health/readiness").body()).isEqualTo("{\"status\":\"UP\"}");
        for (String path : new String[] {"/actuator", "/actuator/env", "/actuator/heapdump", "/actuator/health/db"}) {
            assertThat(ann.get(path).statusCode()).as(path).isEqualTo(404);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"/tests/new", "/css/app.css"})
    void compressesPagesForWhoTakesThemSo(String path) {
        assertThat(ann.get(path, "Accept-Encoding", "gzip").headers().firstValue("Content-Encoding"))
                .contains("gzip");
        assertThat(ann.get(path).headers().firstValue("Content-Encoding")).isEmpty();
    }

    /** Its rows would leave slower than the database gives them. */
    @Test
    void sendsFilesOfRowsAsTheyAre() {
        assertThat(ann.get("/export/tests.csv", "Accept-Encoding", "gzip")
                        .headers()
                        .firstValue("Content-Encoding"))
                .isEmpty();
    }

    /**
     * Where a secret and something that a visitor chose are compressed together, the length of many answers tells the secret
     * letter by letter; not where the secret looks another way each time.
     */
    @Test
    void masksTheTokenOfAFormAnew() {
        assertThat(ann.token()).isNotEqualTo(ann.token());
    }

    @Test
    void tellsNothingOfTheInsideOnRefusals() {
        for (String path :
                new String[] {"/nowhere", "/sites/x", "/sites/999999", "/tests?page=x", "/%2e%2e/x", "//x", "/a;b"}) {
            assertThat(ann.get(path).body())
                    .as(path)
                    .doesNotContain("Exception", "springframework", "Tomcat", "plantair.account");
        }
    }
}
