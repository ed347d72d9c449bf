package plantair.statistics;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** A table of reference numbers: comment lines with their source, one line of names, then rows. */
public record ReferenceTable(List<String> names, List<String[]> rows) {

    public static ReferenceTable read(String file) {
        String path = "/reference/statistics/" + file;
        try (InputStream in = Objects.requireNonNull(ReferenceTable.class.getResourceAsStream(path), path)) {
            List<String[]> cells = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(",", -1))
                    .toList();
            return new ReferenceTable(List.of(cells.get(0)), cells.subList(1, cells.size()));
        } catch (IOException e) {
            throw new UncheckedIOException(path, e);
        }
    }

    public double[] column(String name) {
        int index = names.indexOf(name);
        return rows.stream().mapToDouble(row -> Double.parseDouble(row[index])).toArray();
    }
}
