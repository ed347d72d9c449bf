package plantair.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.junit.jupiter.api.Test;
import plantair.quantity.Unit;

/** The tables of docs/csv.md against the program. */
final class CsvColumnsTests {

    @Test
    void documentsEveryFileAndColumnInOrder() throws IOException {
        List<String> program =
                DictionaryLine.all().stream().map(CsvColumnsTests::documented).toList();

        assertThat(documented()).containsExactlyElementsOf(program);
    }

    @Test
    void namesNoColumnOfAFileTwice() {
        Map<String, List<String>> columns = DictionaryLine.all().stream()
                .filter(line -> !line.column().isEmpty())
                .collect(Collectors.groupingBy(
                        DictionaryLine::file, Collectors.mapping(DictionaryLine::column, Collectors.toList())));

        assertThat(columns.values())
                .allSatisfy(headers -> assertThat(headers)
                        .doesNotHaveDuplicates()
                        .allMatch(header -> header.matches("[a-z][a-z0-9_]*")));
    }

    @Test
    void tellsTheUnitOfEveryNumberInSi() {
        assertThat(DictionaryLine.all())
                .filteredOn(line -> line.meaning().endsWith(", in SI"))
                .hasSizeGreaterThan(30)
                .noneMatch(line -> line.unit().isEmpty());
    }

    @Test
    void leavesOutNoQuotesThatAUnitNeeds() {
        assertThat(Unit.all())
                .allSatisfy(unit ->
                        assertThat(CSVFormat.RFC4180.format("1", unit.code())).isEqualTo("1," + unit.code()));
    }

    private static String documented(DictionaryLine line) {
        if (line.column().isEmpty()) {
            return "### `" + line.file() + ".csv` One row is " + line.meaning() + ".";
        }
        String unit = line.unit().isEmpty() ? " |" : " " + line.unit() + " |";
        return "| `" + line.column() + "` | " + line.meaning() + " |" + unit;
    }

    private static List<String> documented() throws IOException {
        String columns = Files.readString(Path.of("docs/csv.md")).split("\n## Columns\n")[1];
        return Stream.of(columns.replaceAll("(### `.*`)\n\n", "$1 ").split("\n"))
                .filter(line -> line.startsWith("| `") || line.startsWith("### "))
                .toList();
    }
}
