package plantair.export;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A file of the export that is one table of the database.
 *
 * @param name its name, without {@code .csv}
 * @param table the table
 * @param meaning what one row is
 * @param key one or two columns of the table that give its rows an order and are never the same in two rows
 * @param columns its columns in order
 * @param ofMachine condition on the rows that belong to a compressor, with its id as each {@code ?}; null when rows belong to
 *     none
 */
public record DataFile(
        String name,
        String table,
        String meaning,
        List<String> key,
        List<DataColumn> columns,
        @Nullable String ofMachine) {

    public DataFile {
        key = List.copyOf(key);
        columns = List.copyOf(columns);
    }

    static DataFile of(String name, String table, String meaning, List<String> key, DataColumn... columns) {
        return new DataFile(name, table, meaning, key, List.of(columns), null);
    }

    DataFile ofMachine(String condition) {
        return new DataFile(name, table, meaning, key, columns, condition);
    }

    /** The names in its header row. */
    public List<String> headers() {
        return columns.stream().flatMap(column -> column.headers().stream()).toList();
    }

    /** Its lines in the data dictionary. */
    Stream<DictionaryLine> dictionary() {
        return Stream.concat(
                Stream.of(DictionaryLine.of(name, "", meaning)),
                columns.stream().flatMap(column -> {
                    List<String> headers = column.headers();
                    List<String> descriptions = column.descriptions();
                    return IntStream.range(0, headers.size())
                            .mapToObj(i -> DictionaryLine.of(name, headers.get(i), descriptions.get(i)));
                }));
    }
}
