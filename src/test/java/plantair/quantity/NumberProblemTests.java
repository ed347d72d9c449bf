package plantair.quantity;

import static java.time.Duration.ofSeconds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberProblemTests {

    @ParameterizedTest
    @ValueSource(
            strings = {"0", "95", "95.0", "5.", ".5", "-0.3", "-.5", " 7.05 ", "123456789.123456789", "1:02.4", "0:59"})
    void findsNoneInPlainNumbers(String typed) {
        assertThat(NumberProblem.in(typed)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "'', MISSING",
        "'   ', MISSING",
        "7 5, INNER_BLANK",
        "'7,05', COMMA",
        "'1,000', COMMA",
        "1e999, EXPONENT",
        "1E3, EXPONENT",
        "1.5e-3, EXPONENT",
        "1234567890, TOO_LONG",
        "0.1234567890, TOO_LONG",
        "1:60, NOT_MINUTES_SECONDS",
        "1:2, NOT_MINUTES_SECONDS",
        ":30, NOT_MINUTES_SECONDS",
        "-1:30, NOT_MINUTES_SECONDS",
        "1:02:03, NOT_MINUTES_SECONDS",
        "\u0663, NOT_A_NUMBER",
        "\uFF17, NOT_A_NUMBER",
        "NaN, NOT_A_NUMBER",
        "Infinity, NOT_A_NUMBER",
        "-Infinity, NOT_A_NUMBER",
        "0x10, NOT_A_NUMBER",
        "1_000, NOT_A_NUMBER",
        "95f, NOT_A_NUMBER",
        "1.2.3, NOT_A_NUMBER",
        "+5, NOT_A_NUMBER",
        "-, NOT_A_NUMBER",
        "-., NOT_A_NUMBER",
        "--5, NOT_A_NUMBER",
        "5-, NOT_A_NUMBER",
        "-1234567890, TOO_LONG",
        "., NOT_A_NUMBER",
        "=1+1, NOT_A_NUMBER"
    })
    void namesTheProblem(String typed, NumberProblem problem) {
        assertThat(NumberProblem.in(typed)).contains(problem);
    }

    @Test
    void refusesTenThousandCharacters() {
        assertThat(NumberProblem.in("1".repeat(10_000))).contains(NumberProblem.TOO_LONG);
        assertThat(NumberProblem.in("x".repeat(10_000))).contains(NumberProblem.NOT_A_NUMBER);
        assertThat(NumberProblem.in(" ".repeat(10_000))).contains(NumberProblem.MISSING);
        assertThat(NumberProblem.in("1".repeat(10_000) + "e5")).contains(NumberProblem.EXPONENT);
    }

    /** A form post may hold two million characters; work must grow with the length, not with its square. */
    @Test
    void isQuickOnHostileText() {
        String hostile = "1".repeat(100_000) + "x";

        assertTimeoutPreemptively(ofSeconds(5), () -> NumberProblem.in(hostile));
    }
}
