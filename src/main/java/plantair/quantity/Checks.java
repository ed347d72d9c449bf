package plantair.quantity;

/** Argument checks that NaN and infinity fail. */
final class Checks {

    private Checks() {}

    static void finite(double value, String name) {
        if (!(Math.abs(value) <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(name + " must be finite: " + value);
        }
    }

    static void positive(double value, String name) {
        finite(value, name);
        if (!(value > 0)) {
            throw new IllegalArgumentException(name + " must be positive: " + value);
        }
    }

    static void notNegative(double value, String name) {
        finite(value, name);
        if (!(value >= 0)) {
            throw new IllegalArgumentException(name + " must not be negative: " + value);
        }
    }
}
