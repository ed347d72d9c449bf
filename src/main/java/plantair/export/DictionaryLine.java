package plantair.export;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A line of the data dictionary.
 *
 * @param file name of the file, without {@code .csv}
 * @param column name of the column; empty where the line tells what one row of the file is
 * @param meaning what stands in it
 * @param unit its unit; empty where it has none, or where it stands in a column of its own
 */
public record DictionaryLine(String file, String column, String meaning, String unit) {

    private static final Map<String, String> UNITS = longestFirst(
            Map.of("_pa", "Pa", "_k", "K", "_s", "s", "_m", "m", "_m3", "m³", "_w", "W", "_m3_per_s", "m³/s"));

    static DictionaryLine of(String file, String column, String meaning) {
        return new DictionaryLine(file, column, meaning, unit(column));
    }

    /** Every column of every file. */
    public static List<DictionaryLine> all() {
        Stream<DictionaryLine> tests = Stream.concat(
                Stream.of(of(TestFile.NAME, "", "a run of a test; the columns of the test repeat on each of its rows")),
                TestColumns.ALL.stream().map(column -> of(TestFile.NAME, column.header(), column.description())));
        return Stream.of(tests, DataFiles.ALL.stream().flatMap(DataFile::dictionary), LogReadingsFile.dictionary())
                .flatMap(lines -> lines)
                .toList();
    }

    private static Map<String, String> longestFirst(Map<String, String> units) {
        Map<String, String> sorted =
                new TreeMap<>(Comparator.comparingInt(String::length).reversed().thenComparing(suffix -> suffix));
        sorted.putAll(units);
        return sorted;
    }

    private static String unit(String column) {
        return UNITS.entrySet().stream()
                .filter(unit -> column.endsWith(unit.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse("");
    }
}
