package plantair.web.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import plantair.web.SampleSite;

/** A real server, because MockMvc has neither Tomcat's own refusals nor its error dispatch. */
@SpringBootTest(
        classes = {SampleSite.class, SampleSite.Pages.class},
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = "spring.messages.basename=messages/web")
class ErrorPagesServerTests {

    private static final String FORM = "Content-Type: application/x-www-form-urlencoded\r\n";

    @LocalServerPort
    private int port;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/sample/1/missing|404|Not found",
                "/sample/1/stale|409|Changed by somebody else",
                "/sample/1/crash|500|Something went wrong here",
                "/sample/abc/missing|400|This request cannot be read",
                "/sample/99999999999999999999/missing|400|This request cannot be read",
                "/sample/list?page=x|400|This request cannot be read",
                "/sample/list?page=-1|404|Not found",
                "/nowhere|404|Not found",
                "/webjars/none.js|404|Not found",
                "/preferences/units|405|Not possible here"
            })
    void answersWithItsOwnPage(String path, int status, String title) throws IOException {
        var answer = get(path);

        assertThat(answer).startsWith("HTTP/1.1 " + status);
        assertThat(Jsoup.parse(answer).select("h1").text()).isEqualTo(title);
        assertThat(answer)
                .contains("Content-Security-Policy")
                .doesNotContain("secret", "Exception", "Tomcat", "??", "Whitelabel");
    }

    @Test
    void survivesAddressesOfAnyLength() throws IOException {
        assertThat(get("/sample/" + "1".repeat(5_000) + "/missing")).startsWith("HTTP/1.1 400");
        assertThat(get("/sample/list?page=" + "9".repeat(5_000))).startsWith("HTTP/1.1 400");
        assertThat(get("/" + "a".repeat(20_000))).startsWith("HTTP/1.1 400").doesNotContain("Tomcat");
        assertThat(get("/sample/%zz/x")).startsWith("HTTP/1.1 400").doesNotContain("Tomcat");
    }

    @Test
    void refusesBodiesThatAreNoForm() throws IOException {
        String multipart = "Content-Type: multipart/form-data; boundary=x\r\n";

        assertThat(post("/sample/upload", multipart, "--x\r\nrubbish")).startsWith("HTTP/1.1 400");
        assertThat(post("/sample/upload", multipart, "")).startsWith("HTTP/1.1 400");
        assertThat(post("/sample/upload", "Content-Type: multipart/form-data\r\n", "x"))
                .startsWith("HTTP/1.1 400");
        assertThat(post("/sample/upload", FORM, "file=x")).startsWith("HTTP/1.1 4");
        assertThat(post("/sample", "Content-Type: application/json\r\n", "{}")).startsWith("HTTP/1.1 422");
        assertThat(post("/sample", FORM, "name=%zz")).startsWith("HTTP/1.1 400");
        assertThat(post("/sample", FORM, "a=1&".repeat(20_000))).startsWith("HTTP/1.1 4");
        assertThat(post("/sample", FORM, "notes=" + "x".repeat(3_000_000))).startsWith("HTTP/1.1 413");
    }

    @Test
    void showsAClearPageToAForeignSite() throws IOException {
        var foreign =
                send("GET /sample HTTP/1.1\r\nHost: evil.example\r\nAccept: text/html\r\nConnection: close\r\n\r\n");
        var crossSite = post("/preferences/units", FORM + "Origin: http://evil.example\r\n", "units=US");

        assertThat(foreign).startsWith("HTTP/1.1 403").contains("plantair.allowed-hosts");
        assertThat(crossSite).startsWith("HTTP/1.1 403").doesNotContain("Set-Cookie");
    }

    @Test
    void servesTheFilesOfTheLayout() throws IOException {
        for (String path : new String[] {
            "/css/app.css",
            "/favicon.svg",
            "/js/flow-chart.js",
            "/vendor/plot/plot.umd.min.js",
            "/webjars/d3/dist/d3.min.js",
            "/webjars/picocss__pico/css/pico.min.css"
        }) {
            assertThat(get(path)).as(path).startsWith("HTTP/1.1 200");
        }
    }

    @Test
    void tellsTheNumberOfARequestInItsAnswerAndOnThePage() throws IOException {
        var crash = get("/sample/1/crash");
        var refused =
                post("/preferences/units", FORM + "Accept: text/html\r\nOrigin: http://evil.example\r\n", "units=US");

        assertThat(crash).containsPattern("(?s)X-Request-Id: ([0-9a-f]{8}-[0-9a-f]{4})\\r.*request is \\1;");
        assertThat(refused).containsPattern("(?s)X-Request-Id: ([0-9a-f]{8}-[0-9a-f]{4})\\r.*request is \\1;");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "7f3b9c00-aa-12|true",
                "4bf92f3577b34da6a3ce929d0e0e4736|true",
                "short|false",
                "with blank inside|false",
                "with<angle>brackets|false",
                "-begins-with-a-dash|false",
                "a2345678901234567890123456789012345678901234567890123456789012345|false"
            })
    void takesANumberThatIsWellFormed(String sent, boolean taken) throws IOException {
        var answer = send("GET /sample/1/crash HTTP/1.1\r\nHost: localhost:" + port + "\r\nX-Request-Id: " + sent
                + "\r\nConnection: close\r\n\r\n");

        assertThat(answer.contains("X-Request-Id: " + sent + "\r\n")).isEqualTo(taken);
        assertThat(answer.contains("request is " + sent + ";")).isEqualTo(taken);
        assertThat(answer).contains("X-Request-Id: ");
    }

    private String get(String path) throws IOException {
        return send("GET " + path + " HTTP/1.1\r\nHost: localhost:" + port + "\r\nConnection: close\r\n\r\n");
    }

    private String post(String path, String headers, String body) throws IOException {
        return send("POST " + path + " HTTP/1.1\r\nHost: localhost:" + port + "\r\nConnection: close\r\n" + headers
                + "Content-Length: " + body.length() + "\r\n\r\n" + body);
    }

    private String send(String request) throws IOException {
        try (var socket = new Socket("127.0.0.1", port)) {
            socket.setSoTimeout(10_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
