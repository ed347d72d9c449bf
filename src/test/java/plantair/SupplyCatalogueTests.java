package plantair;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import plantair.leak.LeakCode;
import plantair.pumpup.CurveCode;

/** docs/supply.md has every code of a rise and of a fall, says which of them stops, and has no other. */
class SupplyCatalogueTests {

    @Test
    void listsEveryCodeOfARise() throws IOException {
        assertThat(rows("| Code | Comes when | No flow |"))
                .containsExactlyElementsOf(Arrays.stream(CurveCode.values())
                        .map(code -> code + " " + (code.isStop() ? "yes" : "no"))
                        .toList());
    }

    @Test
    void listsEveryCodeOfAFall() throws IOException {
        assertThat(rows("| Code | Comes when | No fit |"))
                .containsExactlyElementsOf(Arrays.stream(LeakCode.values())
                        .map(code -> code + " " + (code.isStop() ? "yes" : "no"))
                        .toList());
    }

    private static List<String> rows(String head) throws IOException {
        String page = Files.readString(Path.of("docs", "supply.md"));
        return page.substring(page.indexOf(head))
                .lines()
                .takeWhile(line -> line.startsWith("|"))
                .skip(2)
                .map(line -> Stream.of(line.split("\\|")).map(String::strip).toList())
                .map(cells -> cells.get(1) + " " + cells.get(3))
                .toList();
    }
}
