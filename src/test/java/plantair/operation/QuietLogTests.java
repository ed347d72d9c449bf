package plantair.operation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plantair.testing.AppProcess;
import plantair.testing.Client;
import plantair.testing.OwnPostgres;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What people do, what is refused, and what fails on both sides of the database, on a real process at its default level: of
 * that nothing that a person is called or typed may be in the log. PostgreSQL, because its messages repeat whole rows.
 */
final class QuietLogTests {

    private static final Pattern CODE = Pattern.compile("one-time code: (\\S+)");

    private static final String USER = "quillan.marsh";
    private static final String NAME = "Quillan Marsh";
    private static final String PASSWORD = "seven zinc ladders in fog 84";
    private static final String MAIL = "marlowe@plant.example";
    private static final String WRONG = "wrong-lantern-word-31";
    private static final String VISITOR = "203.0.113.77";
    private static final String SITE = "Zephyrine hollow";
    private static final String TYPED = "gabbro-nonsense-17";

    private static final List<String> NEVER =
            List.of(USER, NAME, PASSWORD, MAIL, WRONG, VISITOR, SITE, TYPED, "Quillan", "Zephyrine", "gabbro");

    @TempDir
    private Path folder;

    @Test
    void holdsNoNameNoAddressAndNothingThatWasTyped() throws Exception {
        Path lines = folder.resolve("log.json");
        try (var server = OwnPostgres.start(folder.resolve("server"));
                AppProcess app = AppProcess.onDatabase(
                        folder,
                        server.jdbcUrl(),
                        server.user(),
                        "--server.forward-headers-strategy=native",
                        "--logging.structured.format.file=logstash",
                        "--logging.file.name=" + lines)) {
            Client client = signedIn(app);
            refuseASignIn(client);
            client.saved(PlantForms.SITE.with("name", SITE));
            client.saved(PlantForms.COMPRESSOR.with("tag", "C-1"));
            client.saved(PlantForms.RECEIVER);
            client.saved(PlantForms.pumpUp("2026-05-12", "62.2", "62.8", "62.5")
                    .with("pipes", "")
                    .with("tester", NAME)
                    .with("notes", TYPED));
            refuseForms(client, app);
            importLog(client, log("C-" + TYPED));
            String number = failOverARecord(client, server);
            importThatFails(client, server);

            List<JsonNode> structured = Files.readAllLines(lines).stream()
                    .map(JsonMapper.shared()::readTree)
                    .toList();
            assertThat(NEVER).allSatisfy(word -> {
                assertThat(app.log()).doesNotContainIgnoringCase(word);
                assertThat(Files.readString(lines)).doesNotContainIgnoringCase(word);
            });
            assertThat(app.log())
                    .contains("POST /sites failed", "SQL state 23514", "nothing of it was recorded")
                    .containsPattern("\\[" + number + "\\] .*POST /sites failed");
            assertThat(structured)
                    .anySatisfy(line ->
                            assertThat(line.path("requestNumber").asString("")).isEqualTo(number));
        }
    }

    private static Client signedIn(AppProcess app) {
        var code = CODE.matcher(app.log());
        assertThat(code.find()).isTrue();
        var client = Client.stranger(app.baseUrl());
        send(
                client,
                "/setup",
                Map.of(
                        "code", code.group(1),
                        "username", USER,
                        "displayName", NAME,
                        "password", PASSWORD,
                        "again", PASSWORD));
        send(client, "/login", Map.of("username", USER, "password", PASSWORD));
        assertThat(client.get("/tests").statusCode()).isEqualTo(200);
        return client;
    }

    /** As through a proxy that tells where the visitor is. */
    private static HttpResponse<String> send(Client client, String path, Map<String, String> form) {
        Map<String, String> fields = new HashMap<>(form);
        fields.put("_csrf", client.token());
        return client.postAsIs(path, fields, "X-Forwarded-For", VISITOR);
    }

    private static void refuseASignIn(Client client) {
        var stranger = Client.stranger(client.address());
        for (String name : List.of(USER, MAIL)) {
            send(stranger, "/login", Map.of("username", name, "password", WRONG));
        }
        assertThat(stranger.get("/tests").statusCode()).isEqualTo(302);
    }

    private static void refuseForms(Client client, AppProcess app) throws IOException {
        SentForm wrong = PlantForms.SITE.with("name", SITE).with("elevation", TYPED, "[ft_i]");
        assertThat(send(client, "/sites", wrong.fields()).statusCode()).isEqualTo(422);
        assertThat(client.get("/sites/" + TYPED).statusCode()).isEqualTo(400);
        assertThat(client.get("/tests?page=" + TYPED).statusCode()).isEqualTo(400);
        assertThat(client.get("/" + TYPED).statusCode()).isEqualTo(404);
        assertThat(client.get("/calendar/" + TYPED + ".ics").statusCode()).isEqualTo(404);
        URI address = URI.create(app.baseUrl());
        for (String raw : List.of(
                "GET /" + TYPED + "{|} HTTP/1.1\r\nHost: localhost\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: " + TYPED + ":x\r\n\r\n",
                "POST /login HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Length: 25\r\n"
                        + "Content-Type: application/x-www-form-urlencoded\r\n\r\na=" + TYPED + "%zz  ")) {
            try (var socket = new Socket(address.getHost(), address.getPort())) {
                socket.setSoTimeout(10_000);
                socket.getOutputStream().write(raw.getBytes(StandardCharsets.ISO_8859_1));
                assertThat(new String(socket.getInputStream().readNBytes(10), StandardCharsets.US_ASCII))
                        .startsWith("HTTP/1.1 4");
            }
        }
    }

    /** The server refuses a row, and repeats it in its message. */
    private static String failOverARecord(Client client, OwnPostgres server) throws SQLException {
        execute(server, "alter table site add constraint ck_no_more check (id < 2)");

        HttpResponse<String> failed = send(
                client, "/sites", PlantForms.SITE.with("name", SITE + " two").fields());

        String number = failed.headers().firstValue("X-Request-Id").orElseThrow();
        assertThat(failed.statusCode()).isEqualTo(500);
        assertThat(failed.body()).contains("The number of this request is " + number);
        return number;
    }

    private static void importThatFails(Client client, OwnPostgres server) throws Exception {
        execute(server, "alter table pump_up_test add constraint ck_no_more check (id < 2)");

        String page = importLog(client, log("C-1"));
        send(client, page, Map.of());
        assertThat(settled(client, page)).contains("nothing");
    }

    private static String importLog(Client client, String log) throws InterruptedException {
        HttpResponse<String> sent =
                client.upload("/import", Map.of(), TYPED + ".csv", log.getBytes(StandardCharsets.UTF_8));
        String page =
                URI.create(sent.headers().firstValue("Location").orElseThrow()).getPath();
        settled(client, page);
        return page;
    }

    private static String settled(Client client, String page) throws InterruptedException {
        HttpResponse<String> answer = client.get(page);
        while (answer.headers().firstValue("Refresh").isPresent()) {
            Thread.sleep(100);
            answer = client.get(page);
        }
        return answer.body();
    }

    private static String log(String tag) {
        return "site,compressor,date,time,tester,receivers,start_pressure,start_pressure_unit,stop_pressure,"
                + "stop_pressure_unit,elapsed,elapsed_unit,intake_temperature,intake_temperature_unit,notes\n" + SITE
                + "," + tag + ",2019-03-01,14:30," + NAME + ",R-1,140,psi,172,psi,60,s,70,°F," + TYPED + "\n";
    }

    private static void execute(OwnPostgres server, String sql) throws SQLException {
        try (Connection connection = DriverManager.getConnection(server.jdbcUrl(), server.user(), "");
                var statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }
}
