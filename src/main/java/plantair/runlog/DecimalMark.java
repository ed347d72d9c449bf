package plantair.runlog;

import java.util.OptionalDouble;

/** The mark before the decimals. */
public enum DecimalMark {
    /** 3.05. */
    POINT('.'),
    /** 3,05. */
    COMMA(',');

    private static final int LONGEST = 30;

    private final char mark;

    DecimalMark(char mark) {
        this.mark = mark;
    }

    /** The number in a cell; empty when it is none. Powers of ten are taken, names of no number are not. */
    OptionalDouble number(String cell) {
        if (cell.isEmpty() || cell.length() > LONGEST || !hasOnlyNumberSigns(cell)) {
            return OptionalDouble.empty();
        }
        try {
            double number = Double.parseDouble(this == COMMA ? cell.replace(',', '.') : cell);
            return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
        } catch (NumberFormatException none) {
            return OptionalDouble.empty();
        }
    }

    private boolean hasOnlyNumberSigns(String cell) {
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            boolean sign = c >= '0' && c <= '9' || c == mark || c == '-' || c == '+' || c == 'e' || c == 'E';
            if (!sign) {
                return false;
            }
        }
        return true;
    }
}
