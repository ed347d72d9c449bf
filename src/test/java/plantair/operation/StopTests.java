package plantair.operation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import plantair.testing.AppProcess;
import plantair.testing.Client;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;

/** Asked to stop (SIGTERM) while a form comes in slowly. */
final class StopTests {

    /** 128 and the number of SIGTERM, as shells and service managers know it. */
    private static final int ASKED_TO_STOP = 143;

    private static final int A_MOMENT_MS = 2_000;
    private static final long PATIENCE_NS = 60_000_000_000L;

    private static final String NOTE = "came in while it stopped";

    @TempDir
    private Path folder;

    @Test
    void answersWhatIsUnderWayAndKeepsIt() throws Exception {
        try (AppProcess app = AppProcess.onH2File(folder)) {
            Client ann = registered(app);
            var slow = SlowForm.begin(app, ann);

            askToStop(app);
            String answer = slow.finish();

            assertThat(answer).startsWith("HTTP/1.1 302");
            assertThat(app.stop()).isEqualTo(ASKED_TO_STOP);
            assertThat(app.log()).contains("Graceful shutdown complete");
            assertThat(notesOfTests()).containsExactly(NOTE);
        }
    }

    @Test
    void waitsNoLongerThanItIsToldAndKeepsNothingOfHalfAForm() throws Exception {
        try (AppProcess app = AppProcess.onH2File(folder, "--spring.lifecycle.timeout-per-shutdown-phase=2s")) {
            Client ann = registered(app);
            SlowForm.begin(app, ann);

            assertThat(app.stop()).isEqualTo(ASKED_TO_STOP);
            assertThat(notesOfTests()).isEmpty();
        }
    }

    /** What is in the file that the program has left; a test without its result is not there. */
    private List<String> notesOfTests() {
        String url = "jdbc:h2:" + folder.resolve("plant-air") + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;IFEXISTS=TRUE";
        return new JdbcTemplate(new DriverManagerDataSource(url, "sa", ""))
                .queryForList(
                        "select notes from pump_up_test join pump_up_result on test_id = pump_up_test.id",
                        String.class);
    }

    private static Client registered(AppProcess app) {
        Client ann = Client.first(app);
        for (SentForm form : List.of(PlantForms.SITE, PlantForms.COMPRESSOR, PlantForms.RECEIVER)) {
            ann.saved(form);
        }
        return ann;
    }

    private static void askToStop(AppProcess app) throws InterruptedException {
        app.askToStop();
        long deadline = System.nanoTime() + PATIENCE_NS;
        while (!app.log().contains("Commencing graceful shutdown")) {
            assertThat(System.nanoTime()).as(app.log()).isLessThan(deadline);
            Thread.sleep(20);
        }
    }

    /** A test, the second half of which is still to be sent. */
    private record SlowForm(Socket socket, BufferedReader answer, byte[] rest) {

        /** Returns once the server says that it waits for the form. */
        static SlowForm begin(AppProcess app, Client ann) throws IOException, InterruptedException {
            SentForm form = PlantForms.pumpUp("2026-05-12", "62.2", "62.8", "62.5")
                    .with("pipes", "")
                    .with("notes", NOTE);
            byte[] body = body(form, ann.token()).getBytes(StandardCharsets.US_ASCII);
            URI address = URI.create(app.baseUrl());
            var socket = new Socket(address.getHost(), address.getPort());
            socket.setSoTimeout(60_000);
            String head = "POST " + form.address() + " HTTP/1.1\r\nHost: " + address.getAuthority()
                    + "\r\nCookie: SESSION=" + ann.cookie("SESSION").orElseThrow() + "; csrf="
                    + ann.cookie("csrf").orElseThrow()
                    + "\r\nContent-Type: application/x-www-form-urlencoded\r\nExpect: 100-continue\r\nContent-Length: "
                    + body.length + "\r\n\r\n";
            socket.getOutputStream().write(head.getBytes(StandardCharsets.US_ASCII));
            var answer = new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
            assertThat(answer.readLine()).startsWith("HTTP/1.1 100");
            assertThat(answer.readLine()).isEmpty();
            int half = body.length / 2;
            socket.getOutputStream().write(body, 0, half);
            Thread.sleep(A_MOMENT_MS); // the server says so just before it counts the request as one under way
            return new SlowForm(socket, answer, Arrays.copyOfRange(body, half, body.length));
        }

        private static String body(SentForm form, String token) {
            Map<String, String> fields = new HashMap<>(form.fields());
            fields.put("_csrf", token);
            return fields.entrySet().stream()
                    .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                    .collect(Collectors.joining("&"));
        }

        private static String encoded(String text) {
            return URLEncoder.encode(text, StandardCharsets.UTF_8);
        }

        String finish() throws IOException {
            try (socket) {
                socket.getOutputStream().write(rest);
                return answer.readLine();
            }
        }
    }
}
