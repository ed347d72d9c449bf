package plantair.statistics;

/**
 * One unknown of a {@link LeastSquares} fit: how much each result holds of it, and what is known of it beforehand.
 *
 * @param parts one for each result, each finite; 1 where the unknown adds itself to the result, 0 where it has no part in it
 * @param priorU standard uncertainty of the unknown about zero, above zero, in the unit of the results; infinite when
 *     nothing is known of it beforehand
 */
public record Column(double[] parts, double priorU) {

    /** @throws IllegalArgumentException when outside the ranges of the parameters */
    public Column {
        Checks.allFinite(parts, "parts");
        if (!(priorU > 0)) {
            throw new IllegalArgumentException("priorU must be positive: " + priorU);
        }
    }

    /** An unknown of which only the results tell. */
    public static Column free(double... parts) {
        return new Column(parts, Double.POSITIVE_INFINITY);
    }

    /** An error that some of the results share. */
    public static Column sharedError(double u, double... parts) {
        return new Column(parts, Checks.positive(u, "u"));
    }

    boolean isFree() {
        return priorU == Double.POSITIVE_INFINITY;
    }
}
