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

    /** Digits that may stand before the dot, and after it. */
    private static final int MOST_DIGITS = 9;

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
        if (isNumber(typed) || CLOCK.matcher(typed).matches()) {
            return Optional.empty();
        }
        return Optional.of(reason(typed));
    }

    /** Without a pattern: every reading passes here whenever it is read from the database. */
    private static boolean isNumber(String typed) {
        int start = typed.startsWith("-") ? 1 : 0;
        int dot = typed.indexOf('.');
        int whole = digits(typed, start, dot < 0 ? typed.length() : dot);
        int part = dot < 0 ? 0 : digits(typed, dot + 1, typed.length());
        return whole <= MOST_DIGITS && part <= MOST_DIGITS && whole + part > 0;
    }

    /** How many there are in this stretch; too many where anything else is in it. */
    private static int digits(String typed, int from, int to) {
        for (int i = from; i < to; i++) {
            if (typed.charAt(i) < '0' || typed.charAt(i) > '9') {
                return MOST_DIGITS + 1;
            }
        }
        return to - from;
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
