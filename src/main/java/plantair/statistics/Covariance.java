package plantair.statistics;

/** Uncertainties of several results and how far they move together: a symmetric matrix of covariances. */
public final class Covariance {

    private final double[][] values;

    /** Keeps the matrix, which {@link LinearPropagation} has made and lets go of. */
    Covariance(double[][] values) {
        this.values = values;
    }

    /** Number of results. */
    public int size() {
        return values.length;
    }

    /** Covariance of results i and j, in the product of their units; for i = j the variance. */
    public double between(int i, int j) {
        return values[i][j];
    }

    /** Combined standard uncertainty of result i, in its unit, zero or more. */
    public double standardUncertainty(int i) {
        return Math.sqrt(values[i][i]);
    }

    /**
     * Correlation coefficient of results i and j, between −1 and 1.
     *
     * @throws IllegalStateException when one of them has no uncertainty and so no correlation
     */
    public double correlation(int i, int j) {
        double product = standardUncertainty(i) * standardUncertainty(j);
        if (!(product > 0)) {
            throw new IllegalStateException("no correlation without uncertainty: " + i + ", " + j);
        }
        return Math.max(-1, Math.min(1, values[i][j] / product));
    }
}
