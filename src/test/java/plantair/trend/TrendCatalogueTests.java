package plantair.trend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** docs/findings.md has every code of the trend, and no other. */
class TrendCatalogueTests {

    static Stream<Arguments> sections() {
        return Stream.of(
                Arguments.of("Output", TrendCode.values()),
                Arguments.of("Recorded events", StepVerdict.Code.values()),
                Arguments.of("Forecast", Crossing.Code.values()),
                Arguments.of("A new test", NewResult.Code.values()));
    }

    @ParameterizedTest
    @MethodSource("sections")
    void listsEveryCode(String heading, Enum<?>[] codes) throws IOException {
        List<List<String>> rows = rows(heading);

        assertThat(rows.stream().map(row -> row.get(0)))
                .containsExactlyElementsOf(Arrays.stream(codes).map(Enum::name).toList());
        assertThat(rows).allSatisfy(row -> assertThat(row).hasSize(3).doesNotContain(""));
    }

    private static List<List<String>> rows(String heading) throws IOException {
        String page = Files.readString(Path.of("docs", "findings.md"));
        String from = page.substring(page.indexOf("\n### " + heading + "\n") + 5);
        int next = from.indexOf("\n##");
        return (next < 0 ? from : from.substring(0, next))
                .lines()
                .filter(line -> line.startsWith("| ") && !line.startsWith("| Code "))
                .map(line -> Arrays.stream(line.substring(1, line.length() - 1).split("\\|"))
                        .map(String::strip)
                        .toList())
                .toList();
    }
}
