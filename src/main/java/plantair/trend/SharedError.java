package plantair.trend;

/**
 * An error that a test shares with every other test of the same key, such as that of one gauge read at one pair of marks
 * (T7).
 *
 * @param cause what kind of thing carries the error
 * @param key names the carrier; two tests with equal cause and key have the very same error
 * @param coefficient by how much the error moves ln q of this test, in units of the error; mostly 1
 * @param relativeU relative standard uncertainty for a coefficient of 1, zero or more
 */
public record SharedError(Cause cause, String key, double coefficient, double relativeU) {

    /** What carries an error from test to test. */
    public enum Cause {
        /** The same gauge at the same marks. */
        GAUGE,
        /** The same receivers and pipes. */
        VOLUME,
        /** The same thermometer. */
        THERMOMETER,
        /** The same way of treating the receiver air, between the same marks. */
        METHOD,
        /** The slope of flow against pressure that brought a test of another band to the reference pressure. */
        PRESSURE
    }

    /** @throws IllegalArgumentException when a number is not finite or the uncertainty is below zero */
    public SharedError {
        if (!(relativeU >= 0 && relativeU <= Double.MAX_VALUE && Math.abs(coefficient) <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("bad shared error: " + coefficient + ", " + relativeU);
        }
    }

    /** What it adds to the uncertainty of this flow: relative, standard, zero or more. */
    public double relative() {
        return Math.abs(coefficient) * relativeU;
    }

    boolean isSameAs(SharedError other) {
        return cause == other.cause && key.equals(other.key);
    }
}
