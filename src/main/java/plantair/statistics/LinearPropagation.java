package plantair.statistics;

/**
 * The law of propagation of uncertainty, first order, for one or more results of the same inputs: U_y = C U_x Cᵀ, where C
 * holds the sensitivities ∂y_k/∂x_i and U_x the covariances u_i r_ij u_j of the inputs.
 *
 * <p>Valid where the results are nearly straight over the uncertainties of the inputs. Source: JCGM 100:2008, 5.1 and 5.2,
 * for several results H.2 (from memory). Checked by: GumReferenceTests.
 */
public final class LinearPropagation {

    /** Part of a sum of squares below which a negative rest is rounding. */
    private static final double ROUNDING = 1e-12;

    private LinearPropagation() {}

    /**
     * Combined standard uncertainty of independent contributions, √Σ(c_i u_i)².
     *
     * @param contributions c_i u_i, in the unit of the result; the sign is ignored
     * @return zero or more; zero when there is none
     * @throws IllegalArgumentException when one, or their sum of squares, is not finite
     */
    public static double combined(double... contributions) {
        Checks.allFinite(contributions, "contributions");
        double squares = 0;
        for (double contribution : contributions) {
            squares += contribution * contribution;
        }
        return Math.sqrt(Checks.finite(squares, "sum of squares"));
    }

    /**
     * Covariances of results whose inputs are independent.
     *
     * @param sensitivities one row for each result, one column for each input
     * @param u standard uncertainty of each input, zero or more
     * @throws IllegalArgumentException when the arrays do not fit each other or hold something outside these ranges
     */
    public static Covariance of(double[][] sensitivities, double[] u) {
        double[][] independent = new double[u.length][u.length];
        for (int i = 0; i < u.length; i++) {
            independent[i][i] = 1;
        }
        return of(sensitivities, u, independent);
    }

    /**
     * Covariances of results whose inputs move together.
     *
     * @param sensitivities one row for each result, one column for each input
     * @param u standard uncertainty of each input, zero or more
     * @param correlations r_ij of the inputs: symmetric, 1 on the diagonal, between −1 and 1 elsewhere
     * @throws IllegalArgumentException when the arrays do not fit each other or hold something outside these ranges, or
     *     when no quantities can be correlated as the matrix says, so that a variance would fall below zero
     */
    public static Covariance of(double[][] sensitivities, double[] u, double[][] correlations) {
        requireUncertainties(u);
        requireCorrelations(correlations, u.length);
        int results = sensitivities.length;
        double[][] contributions = new double[results][];
        for (int k = 0; k < results; k++) {
            contributions[k] = contributions(sensitivities[k], u);
        }
        double[][] covariances = new double[results][results];
        for (int k = 0; k < results; k++) {
            covariances[k][k] = variance(contributions[k], correlations);
            for (int l = 0; l < k; l++) {
                covariances[k][l] = product(contributions[k], contributions[l], correlations);
                covariances[l][k] = covariances[k][l];
            }
        }
        return new Covariance(covariances);
    }

    private static double[] contributions(double[] row, double[] u) {
        requireLength(row, u.length, "row of sensitivities");
        Checks.allFinite(row, "sensitivities");
        double[] contributions = new double[u.length];
        for (int i = 0; i < u.length; i++) {
            contributions[i] = row[i] * u[i];
        }
        return contributions;
    }

    private static double variance(double[] contributions, double[][] correlations) {
        double variance = product(contributions, contributions, correlations);
        double squares = 0;
        for (double contribution : contributions) {
            squares += contribution * contribution;
        }
        if (variance < -ROUNDING * squares) {
            throw new IllegalArgumentException("correlations contradict each other: variance " + variance);
        }
        return Math.max(0, variance);
    }

    private static double product(double[] left, double[] right, double[][] correlations) {
        double sum = 0;
        for (int i = 0; i < left.length; i++) {
            for (int j = 0; j < right.length; j++) {
                sum += left[i] * correlations[i][j] * right[j];
            }
        }
        return Checks.finite(sum, "covariance");
    }

    private static void requireUncertainties(double[] u) {
        for (int i = 0; i < u.length; i++) {
            Checks.notNegative(u[i], "u[" + i + "]");
        }
    }

    private static void requireCorrelations(double[][] correlations, int inputs) {
        if (correlations.length != inputs) {
            throw new IllegalArgumentException("correlations must have " + inputs + " rows: " + correlations.length);
        }
        for (int i = 0; i < inputs; i++) {
            requireLength(correlations[i], inputs, "row of correlations");
        }
        for (int i = 0; i < inputs; i++) {
            for (int j = 0; j < inputs; j++) {
                double r = correlations[i][j];
                if (!(Math.abs(r) <= 1 && r == correlations[j][i] && (i != j || r == 1))) {
                    throw new IllegalArgumentException("no correlation at [" + i + "][" + j + "]: " + r);
                }
            }
        }
    }

    private static void requireLength(double[] row, int length, String name) {
        if (row.length != length) {
            throw new IllegalArgumentException(name + " must have " + length + " columns: " + row.length);
        }
    }
}
