package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** docs/findings.md and the messages have every code, and no other. */
class FindingCatalogueTests {

    private static final Path PAGE = Path.of("docs", "findings.md");
    private static final Path MESSAGES = Path.of("src", "main", "resources", "messages", "testrecord.properties");

    @Test
    void listsEveryFindingWithItsSeverity() throws IOException {
        Map<String, String> codes = new LinkedHashMap<>();
        for (FindingCode code : FindingCode.values()) {
            codes.put(code.name(), code.severity().name());
        }

        assertThat(section("Findings").collect(Collectors.toMap(row -> row.get(0), row -> row.get(1))))
                .isEqualTo(codes);
    }

    @Test
    void listsEveryUnlikelyReading() throws IOException {
        assertThat(section("Unlikely readings").map(row -> row.get(0)))
                .containsExactlyInAnyOrderElementsOf(
                        Stream.of(UnlikelyReading.Code.values()).map(Enum::name).toList());
    }

    @Test
    void listsEverySeverity() throws IOException {
        assertThat(section("Severities").map(row -> row.get(0)))
                .containsExactlyInAnyOrderElementsOf(
                        Stream.of(Severity.values()).map(Enum::name).toList());
    }

    @Test
    void saysWhenAndWhatToDo() throws IOException {
        assertThat(Stream.of("Findings", "Unlikely readings").flatMap(FindingCatalogueTests::sectionQuietly))
                .allSatisfy(row -> assertThat(row).hasSize(4).doesNotContain(""));
    }

    @ParameterizedTest
    @EnumSource
    void hasWordsForEveryFinding(FindingCode code) throws IOException {
        assertThat(messages().getProperty("finding." + code)).isNotBlank();
    }

    @ParameterizedTest
    @EnumSource
    void hasWordsForEveryUnlikelyReading(UnlikelyReading.Code code) throws IOException {
        assertThat(messages().getProperty("unlikely." + code)).isNotBlank();
    }

    private static Properties messages() throws IOException {
        var messages = new Properties();
        try (Reader reader = Files.newBufferedReader(MESSAGES)) {
            messages.load(reader);
        }
        return messages;
    }

    private static Stream<List<String>> sectionQuietly(String heading) {
        try {
            return section(heading);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The rows of the table under a heading, without its head. */
    private static Stream<List<String>> section(String heading) throws IOException {
        String page = Files.readString(PAGE);
        String from = page.substring(page.indexOf("\n## " + heading + "\n") + 4);
        int next = from.indexOf("\n## ");
        return (next < 0 ? from : from.substring(0, next))
                .lines()
                .filter(line -> line.startsWith("|"))
                .skip(2)
                .map(line -> Stream.of(line.substring(1, line.lastIndexOf('|')).split("\\|"))
                        .map(String::strip)
                        .toList());
    }
}
