package plantair.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.microsoft.playwright.Page;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The harness itself must see the faults that the journeys rely on it to see. */
@NeedsBrowser
final class BrowserTests {

    private static final String PAGE = """
            <!doctype html><html lang="en"><head><title>Page</title><link rel="icon" href="data:,">
            <meta name="viewport" content="width=device-width, initial-scale=1"></head>
            <body><main><h1>Page</h1>%s</main></body></html>""";

    private static final Map<String, String> BODIES = Map.of(
            "/sound", "<p>Sound</p>",
            "/refused", "<p>Refused</p>",
            "/failed", "<p>Failed</p>",
            "/no-label", "<input name='bare'>",
            "/console", "<script src='/console.js'></script>",
            "/throws", "<script src='/throws.js'></script>",
            "/inline", "<script>document.title = 'inline'</script>",
            "/part", "<img src='/missing.png' alt='Missing'>");

    private static final Map<String, String> SCRIPTS =
            Map.of("/console.js", "console.error('planted message')", "/throws.js", "throw new Error('planted error')");

    private static HttpServer server;
    private static String baseUrl;

    @BeforeAll
    static void serve() throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", BrowserTests::answer);
        server.start();
        baseUrl = "http://127.0.0.1:" + server.getAddress().getPort();
    }

    @AfterAll
    static void stop() {
        server.stop(0);
    }

    @Test
    void passesASoundPageOnPhoneAndDesktop(Browser browser) throws IOException {
        try (Visit phone = browser.phone(baseUrl);
                Visit desktop = browser.desktop(baseUrl)) {
            Page onPhone = phone.open("/sound");
            Page onDesktop = desktop.open("/sound");

            phone.checkAccessibility();
            assertThat(onPhone.evaluate("innerWidth")).isEqualTo(390);
            assertThat(onPhone.evaluate("matchMedia('(pointer: coarse)').matches"))
                    .isEqualTo(true);
            assertThat(onDesktop.evaluate("innerWidth")).isEqualTo(1280);
            assertThat(Files.size(phone.screenshot("harness-phone"))).isPositive();
        }
    }

    @Test
    void runsNoScriptWhereScriptsAreOff(Browser browser) {
        try (Visit visit = browser.withoutScript(baseUrl)) {
            visit.open("/console");

            assertThat(visit.takeFaults()).isEmpty();
        }
    }

    @Test
    void reportsAPlantedBarrier(Browser browser) {
        try (Visit visit = browser.desktop(baseUrl)) {
            visit.open("/no-label");

            assertThatThrownBy(visit::checkAccessibility)
                    .isInstanceOf(AssertionError.class)
                    .hasMessageContaining("critical, label")
                    .hasMessageContaining("name=\"bare\"");
        }
    }

    @Test
    void failsOnAConsoleError(Browser browser) {
        Visit visit = browser.desktop(baseUrl);
        visit.open("/console");

        assertThatThrownBy(visit::close).isInstanceOf(AssertionError.class).hasMessageContaining("planted message");
    }

    @Test
    void failsOnAScriptThatThrows(Browser browser) {
        assertThat(faultsOf(browser, "/throws")).contains("planted error");
    }

    @Test
    void failsOnABreachOfTheContentSecurityPolicy(Browser browser) {
        assertThat(faultsOf(browser, "/inline")).contains("Content Security Policy");
    }

    @Test
    void failsOnAMissingPartOfAPage(Browser browser) {
        assertThat(faultsOf(browser, "/part")).contains("answered 404").contains("/missing.png");
    }

    @Test
    void failsOnAServerErrorButNotOnARefusedPage(Browser browser) {
        assertThat(faultsOf(browser, "/failed")).contains("answered 500");
        assertThat(faultsOf(browser, "/refused")).isEmpty();
    }

    private static String faultsOf(Browser browser, String path) {
        try (Visit visit = browser.desktop(baseUrl)) {
            visit.open(path);
            return String.join("\n", visit.takeFaults());
        }
    }

    private static void answer(HttpExchange exchange) throws IOException {
        String path = exchange.getRequestURI().getPath();
        String text = SCRIPTS.getOrDefault(path, PAGE.formatted(BODIES.getOrDefault(path, "")));
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        exchange.getResponseHeaders().add("Content-Type", path.endsWith(".js") ? "text/javascript" : "text/html");
        exchange.getResponseHeaders().add("Content-Security-Policy", "default-src 'self'; img-src 'self' data:");
        exchange.sendResponseHeaders(status(path), bytes.length);
        exchange.getResponseBody().write(bytes);
        exchange.close();
    }

    private static int status(String path) {
        return switch (path) {
            case "/failed" -> 500;
            case "/refused" -> 422;
            case "/missing.png" -> 404;
            default -> 200;
        };
    }
}
