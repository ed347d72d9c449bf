package plantair.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The table of docs/csv.md against the program. */
final class CsvColumnsTests {

    @Test
    void documentsEveryColumnInOrder() throws IOException {
        List<String> program = TestColumns.ALL.stream()
                .map(column -> "| `" + column.header() + "` | " + column.description() + " |")
                .toList();

        assertThat(rows()).containsExactlyElementsOf(program);
    }

    @Test
    void namesNoColumnTwice() {
        assertThat(TestColumns.ALL)
                .extracting(TestColumn::header)
                .doesNotHaveDuplicates()
                .allMatch(header -> header.matches("[a-z][a-z0-9_]*"));
    }

    private static List<String> rows() throws IOException {
        try (Stream<String> lines = Files.lines(Path.of("docs/csv.md"))) {
            return lines.filter(line -> line.startsWith("| `")).toList();
        }
    }
}
