package plantair.export;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;

/**
 * One column of the file of tests; docs/csv.md lists them all.
 *
 * @param header its name
 * @param description what stands in it
 * @param isOfRun whether it differs between the runs of a test
 * @param isPlain whether its cells never need quotes: numbers, and codes of units
 * @param value its cell for a run; empty text when there is nothing
 */
record TestColumn(
        String header, String description, boolean isOfRun, boolean isPlain, Function<TestRun, String> value) {

    /** The same as a column that differs between the runs of a test. */
    TestColumn ofRun() {
        return new TestColumn(header, description, true, isPlain, value);
    }

    /** Words that somebody typed or that hold such words. */
    static TestColumn text(String header, String description, Function<TestRun, @Nullable String> text) {
        return new TestColumn(
                header,
                description,
                false,
                false,
                run -> Optional.ofNullable(text.apply(run)).map(SafeText::of).orElse(""));
    }

    /** A code, date or count that the program made. */
    static TestColumn code(String header, String description, Function<TestRun, @Nullable Object> code) {
        return code(header, description, false, code);
    }

    private static TestColumn code(
            String header, String description, boolean isPlain, Function<TestRun, @Nullable Object> code) {
        return new TestColumn(
                header,
                description,
                false,
                isPlain,
                run -> Optional.ofNullable(code.apply(run))
                        .map(Object::toString)
                        .orElse(""));
    }

    /** A number to its last digit, without power of ten. */
    static TestColumn number(String header, String description, Function<TestRun, @Nullable Double> number) {
        return new TestColumn(
                header,
                description,
                false,
                true,
                run -> Optional.ofNullable(number.apply(run))
                        .map(TestColumn::plain)
                        .orElse(""));
    }

    /** A reading as typed in two columns, and in SI in a third. */
    static <Q> Stream<TestColumn> reading(
            String header, String description, Function<TestRun, @Nullable Entered> reading, Si<Q> si) {
        return Stream.concat(
                typed(header, description, reading),
                Stream.of(number(header + si.suffix(), description + ", in SI", run -> si.of(reading.apply(run)))));
    }

    /** A reading as typed in two columns: number and unit. */
    static Stream<TestColumn> typed(String header, String description, Function<TestRun, @Nullable Entered> reading) {
        return Stream.of(
                code(
                        header,
                        description + ", as typed",
                        true,
                        run -> Optional.ofNullable(reading.apply(run))
                                .map(Entered::number)
                                .orElse(null)),
                code(
                        header + "_unit",
                        "unit code of `" + header + "`",
                        true,
                        run -> Optional.ofNullable(reading.apply(run))
                                .map(entered -> entered.unit().code())
                                .orElse(null)));
    }

    static String plain(double number) {
        String digits = Double.toString(number);
        return digits.indexOf('E') < 0 ? digits : new BigDecimal(digits).toPlainString();
    }
}
