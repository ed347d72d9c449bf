package plantair.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.test.web.server.LocalServerPort;
import plantair.testing.OnH2;
import plantair.testing.People;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** docs/api.md does what it says. */
@OnH2
final class ApiPageTests {

    private static final Pattern BLOCK = Pattern.compile("```(\\w+)\n(.*?)```", Pattern.DOTALL);

    @LocalServerPort
    private int port;

    private Caller caller;
    private List<String> blocks;

    @BeforeEach
    void readPage() throws IOException {
        caller = new Caller(port);
        blocks = BLOCK.matcher(Files.readString(Path.of("docs/api.md")))
                .results()
                .map(block -> block.group(2))
                .toList();
    }

    @Test
    void showsTheAnswerToItsExample() {
        JsonNode answer = caller.evaluate(Caller.JSON.readTree(blocks.get(0)), "?units=BAR_LITRE")
                .json();

        assertShown(answer);
    }

    /** As typed, but for the port of the test. */
    @Test
    void givesACommandThatWorks(@TempDir Path folder) throws Exception {
        assumeThat(Files.isExecutable(Path.of("/usr/bin/curl"))).as("curl").isTrue();
        Files.writeString(folder.resolve("readings.json"), blocks.get(0));
        String command = blocks.get(1)
                .strip()
                .replace("curl --user ann ", "curl -s --user 'ann:" + People.PASSWORD + "' ")
                .replace("localhost:8080", "localhost:" + port);

        Process process = new ProcessBuilder("sh", "-c", command)
                .directory(folder.toFile())
                .start();
        String answer = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

        assertThat(process.waitFor()).isZero();
        assertShown(Caller.JSON.readTree(answer));
    }

    @Test
    void showsAnErrorAsItIs() {
        var request = (ObjectNode) Caller.JSON.readTree(blocks.get(0));
        ((ObjectNode) request.at("/runs/0")).set("stop", EvaluateTests.quantity(6.2, "bar"));

        JsonNode answer = caller.evaluate(request).json();

        assertThat(answer.get("errors")).containsExactly(Caller.JSON.readTree(blocks.get(3)));
    }

    private void assertShown(JsonNode answer) {
        JsonNode shown = Caller.JSON.readTree(blocks.get(2));

        assertThat(shown.propertyNames())
                .isNotEmpty()
                .allSatisfy(name ->
                        assertThat(answer.get(name)).as(name + " of " + answer).isEqualTo(shown.get(name)));
    }
}
