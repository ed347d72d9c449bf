package plantair.transfer;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import plantair.export.CellKind;
import plantair.export.DataColumn;
import plantair.export.DataFile;

/** Reads an exported file as the rows of its table. tests.csv holds two tables: the one of tests has a row where the test changes. */
final class TableRows {

    private final DataFile file;
    private final boolean onceATest;
    private final Remarks problems;
    private String test = "";

    TableRows(DataFile file, boolean onceATest, Remarks problems) {
        this.file = file;
        this.onceATest = onceATest;
        this.problems = problems;
    }

    /** Gives the line and values of each row; what cannot be a value is told and its row left out. */
    void read(Path path, BiConsumer<Long, List<@Nullable Object>> rows) {
        String name = UnpackedZip.csv(file.name());
        var csv = new CsvRows(name, problems);
        try (InputStream in = Files.newInputStream(path)) {
            csv.read(in, row -> {
                boolean again = onceATest && row.cell("test_id").equals(test);
                test = row.cell("test_id");
                if (!again && csv.header().containsAll(needed())) {
                    read(row, rows);
                }
            });
            needed().stream()
                    .filter(column -> !csv.header().isEmpty() && !csv.header().contains(column))
                    .forEach(column -> problems.add(name, 1, column, "import.columnMissing", column));
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    private List<String> needed() {
        List<String> needed = new ArrayList<>();
        for (DataColumn column : file.columns()) {
            needed.addAll(column.headers().subList(0, column.kind() == CellKind.READING ? 2 : 1));
        }
        return needed;
    }

    private void read(Row row, BiConsumer<Long, List<@Nullable Object>> rows) {
        List<@Nullable Object> values = new ArrayList<>();
        boolean sound = true;
        for (DataColumn column : file.columns()) {
            try {
                values.add(column.read(row::cell));
            } catch (IllegalArgumentException | DateTimeException unreadable) {
                sound = false;
                String cell = row.cell(column.header());
                String code = cell.isEmpty() ? "import.empty" : "import.cell";
                problems.add(row.file(), row.line(), column.header(), code, cell);
            }
        }
        if (sound) {
            rows.accept(row.line(), values);
        }
    }
}
