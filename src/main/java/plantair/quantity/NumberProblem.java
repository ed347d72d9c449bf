package plantair.quantity;

import java.util.Optional;
import java.util.regex.Pattern;

/** Why a typed text is not taken as a number. The rule is strict so that no reading is guessed at. */
public enum NumberProblem {
    /** Nothing was typed. */
    MISSING,
    /** A blank inside, as in "7 5". */
    INNER_BLANK,
    /** A comma, as in "7,05": it may mean 7.05 or 705. */
    COMMA,
    /** Powers of ten, as in "1e999". */
    EXPONENT,
    /** More than nine digits before or after the dot. */
    TOO_LONG,
    /** Minutes and seconds that are not m:ss with seconds below 60. */
    NOT_MINUTES_SECONDS,
    /** Anything else. */
    NOT_A_NUMBER;

    private static final Pattern NUMBER = Pattern.compile("-?(\\d{1,9}(\\.\\d{0,9})?|\\.\\d{1,9})");
    private static final Pattern LONG_NUMBER = Pattern.compile("-?\\d*+\\.?\\d*+");
    private static final Pattern EXPONENT_NUMBER = Pattern.compile("[-+]?[\\d.]+[eE][-+]?\\d+");
    private static final Pattern CLOCK = Pattern.compile("\\d{1,4}:[0-5]\\d(\\.\\d{0,3})?");

    /**
     * What is wrong with a typed number; empty when it can be read.
     *
     * @param text as typed, blanks at the ends allowed
     * @return the problem, or empty
     */
    public static Optional<NumberProblem> in(String text) {
        String typed = text.strip();
        if (NUMBER.matcher(typed).matches() || CLOCK.matcher(typed).matches()) {
            return Optional.empty();
        }
        return Optional.of(reason(typed));
    }

    private static NumberProblem reason(String typed) {
        if (typed.isEmpty()) {
            return MISSING;
        }
        if (typed.indexOf(':') >= 0) {
            return NOT_MINUTES_SECONDS;
        }
        if (typed.indexOf(',') >= 0) {
            return COMMA;
        }
        if (EXPONENT_NUMBER.matcher(typed).matches()) {
            return EXPONENT;
        }
        if (typed.chars().anyMatch(Character::isWhitespace)) {
            return INNER_BLANK;
        }
        boolean hasDigit = typed.chars().anyMatch(c -> c >= '0' && c <= '9');
        return hasDigit && LONG_NUMBER.matcher(typed).matches() ? TOO_LONG : NOT_A_NUMBER;
    }
}
