package plantair.export;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What a column holds: how it comes out of the database into a cell, and from a cell back. */
public enum CellKind {
    /** Words that somebody typed. */
    TEXT(Types.VARCHAR, Shape.plain(SafeText::of), SafeText::undo),
    /** A code that the program knows. */
    CODE(Types.VARCHAR, Shape.plain(text -> text), text -> text),
    /** A reading: number, blank, unit code. */
    READING(Types.VARCHAR, Shape.plain(text -> text), text -> text),
    /** Number of a record. */
    ID(Types.BIGINT, Shape.plain(text -> text), CellKind::id),
    /** A whole number. */
    WHOLE(Types.INTEGER, Shape.plain(text -> text), Integer::valueOf),
    /** A place in a list: from 1 in the file, from 0 in the database. */
    PLACE(
            Types.INTEGER,
            Shape.plain(text -> String.valueOf(Integer.parseInt(text) + 1)),
            text -> Integer.parseInt(text) - 1),
    /** A number to its last digit. */
    NUMBER(Types.DOUBLE, Shape.of(Double.class, TestColumn::plain), CellKind::finite),
    /** Yes or no. */
    FLAG(Types.BOOLEAN, Shape.of(Boolean.class, String::valueOf), CellKind::flag),
    /** A day. */
    DAY(Types.DATE, Shape.of(LocalDate.class, LocalDate::toString), CellKind::day),
    /** A moment. */
    MOMENT(
            Types.TIMESTAMP_WITH_TIMEZONE,
            Shape.of(OffsetDateTime.class, moment -> moment.toInstant().toString()),
            CellKind::moment),
    /** A random key. */
    KEY(Types.OTHER, Shape.of(UUID.class, UUID::toString), CellKind::key);

    private static final int EARLIEST_YEAR = 1000;
    private static final int LATEST_YEAR = 9999;

    private final int sqlType;
    private final Shape<?> shape;
    private final Function<String, Object> parser;

    CellKind(int sqlType, Shape<?> shape, Function<String, Object> parser) {
        this.sqlType = sqlType;
        this.shape = shape;
        this.parser = parser;
    }

    int sqlType() {
        return sqlType;
    }

    /** What stands in the cell; null for nothing. */
    @Nullable
    String cell(ResultSet row, String column) throws SQLException {
        return shape.cell(row, column);
    }

    /**
     * What a cell says, as the database takes it.
     *
     * @throws IllegalArgumentException when it is not of this kind
     * @throws java.time.DateTimeException when it is no day or moment
     */
    Object parse(String cell) {
        return parser.apply(cell);
    }

    private static Long id(String cell) {
        long id = Long.parseLong(cell);
        if (id < 1 || id > Long.MAX_VALUE / 2) {
            throw new IllegalArgumentException("no number of a record: " + cell);
        }
        return id;
    }

    private static Double finite(String cell) {
        double number = Double.parseDouble(cell);
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("no number: " + cell);
        }
        return number;
    }

    private static Boolean flag(String cell) {
        if (!cell.equals("true") && !cell.equals("false")) {
            throw new IllegalArgumentException("neither true nor false: " + cell);
        }
        return cell.equals("true");
    }

    private static LocalDate day(String cell) {
        return inRange(LocalDate.parse(cell));
    }

    private static OffsetDateTime moment(String cell) {
        OffsetDateTime moment = OffsetDateTime.parse(cell).withOffsetSameInstant(ZoneOffset.UTC);
        inRange(moment.toLocalDate());
        return moment;
    }

    private static LocalDate inRange(LocalDate day) {
        if (day.getYear() < EARLIEST_YEAR || day.getYear() > LATEST_YEAR) {
            throw new IllegalArgumentException("no day of this age: " + day);
        }
        return day;
    }

    private static UUID key(String cell) {
        UUID key = UUID.fromString(cell);
        if (!key.toString().equalsIgnoreCase(cell)) {
            throw new IllegalArgumentException("no key: " + cell);
        }
        return key;
    }

    /** From the database into a cell. */
    private record Shape<T>(@Nullable Class<T> type, Function<T, String> words) {

        static Shape<String> plain(Function<String, String> words) {
            return new Shape<>(null, words);
        }

        static <T> Shape<T> of(Class<T> type, Function<T, String> words) {
            return new Shape<>(type, words);
        }

        @Nullable
        String cell(ResultSet row, String column) throws SQLException {
            T value = type == null ? text(row, column) : row.getObject(column, type);
            return value == null || row.wasNull() ? null : words.apply(value);
        }

        @SuppressWarnings("unchecked")
        private T text(ResultSet row, String column) throws SQLException {
            return (T) row.getString(column);
        }
    }
}
