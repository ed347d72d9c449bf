package plantair.pumpup;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** A table of reference numbers: comment lines with their source, one line of names, then rows. */
record ReferenceRows(List<Map<String, String>> rows) {

    static ReferenceRows read(String file) {
        String path = "/reference/pumpup/" + file;
        try (InputStream in = Objects.requireNonNull(ReferenceRows.class.getResourceAsStream(path), path)) {
            List<String[]> cells = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(",", -1))
                    .toList();
            String[] names = cells.get(0);
            return new ReferenceRows(
                    cells.stream().skip(1).map(row -> named(names, row)).toList());
        } catch (IOException e) {
            throw new UncheckedIOException(path, e);
        }
    }

    private static Map<String, String> named(String[] names, String[] row) {
        if (row.length != names.length) {
            throw new IllegalStateException("row of " + row.length + " cells, wanted " + names.length);
        }
        Map<String, String> named = new LinkedHashMap<>();
        for (int i = 0; i < names.length; i++) {
            named.put(names[i], row[i]);
        }
        return named;
    }

    static double number(Map<String, String> row, String name) {
        return Double.parseDouble(Objects.requireNonNull(row.get(name), name));
    }
}
