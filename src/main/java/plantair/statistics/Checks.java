package plantair.statistics;

/** Argument checks that NaN and infinity fail. */
final class Checks {

    private Checks() {}

    static double finite(double value, String name) {
        if (!(Math.abs(value) <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(name + " must be finite: " + value);
        }
        return value;
    }

    static double positive(double value, String name) {
        finite(value, name);
        if (!(value > 0)) {
            throw new IllegalArgumentException(name + " must be positive: " + value);
        }
        return value;
    }

    static double notNegative(double value, String name) {
        finite(value, name);
        if (!(value >= 0)) {
            throw new IllegalArgumentException(name + " must not be negative: " + value);
        }
        return value;
    }

    static void allFinite(double[] values, String name) {
        for (int i = 0; i < values.length; i++) {
            finite(values[i], name + "[" + i + "]");
        }
    }
}
