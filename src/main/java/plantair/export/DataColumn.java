package plantair.export;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;

/**
 * A column of a table as it stands in a file. A reading takes two columns of the file, number and unit as typed, and a
 * third in SI where its quantity is known.
 *
 * @param header its name in the file
 * @param column its name in the database
 * @param description what stands in it
 * @param kind what it holds
 * @param optional whether it may be empty; a text may be so anyway
 * @param check refuses what the kind alone would take, by an IllegalArgumentException
 * @param si the quantity of a reading; null for any other kind, and for a reading in a unit of its own
 */
public record DataColumn(
        String header,
        String column,
        String description,
        CellKind kind,
        boolean optional,
        Function<String, ?> check,
        @Nullable Si<?> si) {

    private static final String UNIT = "_unit";

    /** A column that is never empty. */
    static DataColumn of(CellKind kind, String header, String column, String description) {
        return new DataColumn(header, column, description, kind, false, cell -> cell, null);
    }

    static DataColumn of(CellKind kind, String name, String description) {
        return of(kind, name, name, description);
    }

    static DataColumn text(String name, String description) {
        return of(CellKind.TEXT, name, description);
    }

    static DataColumn id(String header, String column, String description) {
        return of(CellKind.ID, header, column, description);
    }

    static DataColumn code(String name, String description, Function<String, ?> check) {
        return new DataColumn(name, name, description, CellKind.CODE, false, check, null);
    }

    /** A code that is one of an enum's constants. */
    static <E extends Enum<E>> DataColumn code(String name, String description, Class<E> constants) {
        return code(name, description, cell -> Enum.valueOf(constants, cell));
    }

    static DataColumn reading(String name, String description, @Nullable Si<?> si) {
        return new DataColumn(name, name, description, CellKind.READING, false, DataColumn::reading, si);
    }

    private static Entered reading(String text) {
        return Entered.parse(text);
    }

    DataColumn orEmpty() {
        return new DataColumn(header, column, description, kind, true, check, si);
    }

    /** The names that it has in the file. */
    public List<String> headers() {
        if (kind != CellKind.READING) {
            return List.of(header);
        }
        Stream<String> typed = Stream.of(header, header + UNIT);
        return (si == null ? typed : Stream.concat(typed, Stream.of(header + si.suffix()))).toList();
    }

    /** What stands in each of them. */
    List<String> descriptions() {
        if (kind != CellKind.READING) {
            return List.of(description);
        }
        Stream<String> typed = Stream.of(description + ", as typed", "unit code of `" + header + "`");
        return (si == null ? typed : Stream.concat(typed, Stream.of(description + ", in SI"))).toList();
    }

    /** Its cells of a row. */
    Stream<String> cells(ResultSet row) throws SQLException {
        String value = kind.cell(row, column);
        if (kind != CellKind.READING) {
            return Stream.of(value == null ? "" : value);
        }
        if (value == null) {
            return headers().stream().map(name -> "");
        }
        int blank = value.indexOf(' ');
        Stream<String> typed = Stream.of(value.substring(0, blank), value.substring(blank + 1));
        return si == null ? typed : Stream.concat(typed, Stream.of(inSi(si, value)));
    }

    private static String inSi(Si<?> si, String text) {
        Double number = si.of(Entered.parse(text));
        return number == null ? "" : TestColumn.plain(number);
    }

    /**
     * What the cells of a row say, as the database takes it.
     *
     * @param cell a cell by the name of its column
     * @return null when it is empty
     * @throws IllegalArgumentException when it is empty and must not be, or cannot be what this column holds
     * @throws java.time.DateTimeException when it is no day or moment
     */
    public @Nullable Object read(UnaryOperator<String> cell) {
        String typed = cell.apply(header);
        if (typed.isEmpty() && (optional || kind == CellKind.TEXT)) {
            return optional ? null : "";
        }
        if (typed.isEmpty()) {
            throw new IllegalArgumentException("nothing in it");
        }
        String value = kind == CellKind.READING ? typed + " " + cell.apply(header + UNIT) : typed;
        check.apply(value);
        if (si != null) {
            si.of(Entered.parse(value));
        }
        return kind.parse(value);
    }

    /** How JDBC calls what it holds. */
    public int sqlType() {
        return kind.sqlType();
    }
}
