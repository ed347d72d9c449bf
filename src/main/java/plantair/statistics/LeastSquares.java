package plantair.statistics;

import java.util.List;

/**
 * Best values of several unknowns from results that hold parts of them (T6), with errors that results share (T7).
 *
 * <p>y = Σβx with standard uncertainty u of each y. The sum of squares Σ((y − Σβx)/u)² + Σ(β/u_β)² is made least, the second
 * sum over the unknowns with a prior. A shared error is such an unknown, zero give or take u_β. The free unknowns, their
 * covariance and the sum then come out as from generalised least squares with the covariance matrix
 * diag(u²) + Σ u_β² x xᵀ, without a matrix of the size of the record.
 *
 * <p>Solved by QR decomposition, which keeps the digits that normal equations lose. A column that depends on those before it
 * (own part below 1e-10 of it) is left out, as R's lm does; see {@link #isDetermined}.
 *
 * <p>Source: weighted and generalised least squares as in any text; shared errors as further unknowns after C. R. Henderson,
 * Biometrics 31, 423 (1975), from memory. Checked by: LeastSquaresReferenceTests, LeastSquaresTests.
 */
public final class LeastSquares {

    private final double[] values;
    private final double[][] inverse;
    private final boolean[] determined;
    private final double chiSquare;
    private final int degreesOfFreedom;

    /** The results go through the same steps as a last column; what it has of its own is the misfit. */
    private LeastSquares(List<Column> columns, double[] y, double[] u) {
        int unknowns = columns.size();
        double[][] weighted = new double[unknowns + 1][];
        for (int j = 0; j < unknowns; j++) {
            weighted[j] = over(u, columns.get(j).parts(), unknowns);
            weighted[j][u.length + j] = 1 / columns.get(j).priorU();
        }
        weighted[unknowns] = over(u, y, unknowns);
        Triangle triangle = new Triangle(weighted);
        inverse = triangle.inverse(unknowns);
        values = new double[unknowns];
        determined = new boolean[unknowns];
        int free = 0;
        for (int i = 0; i < unknowns; i++) {
            determined[i] = triangle.isIndependent(i);
            free += determined[i] && columns.get(i).isFree() ? 1 : 0;
            for (int j = i; j < unknowns; j++) {
                values[i] += inverse[i][j] * triangle.get(j, unknowns);
            }
        }
        Checks.allFinite(values, "values");
        double misfit = triangle.get(unknowns, unknowns);
        chiSquare = Checks.finite(misfit * misfit, "chiSquare");
        degreesOfFreedom = y.length - free;
    }

    /**
     * Fits the unknowns.
     *
     * @param columns the unknowns, in the order in which to keep them when some depend on others
     * @param y the results
     * @param u standard uncertainty of each result from causes that it shares with no other, above zero, in its unit
     * @throws IllegalArgumentException when the arrays differ in length or are empty, when a number is not finite or u not
     *     above zero, or when a sum is too large or small for a double
     */
    public static LeastSquares fit(List<Column> columns, double[] y, double[] u) {
        if (y.length == 0 || u.length != y.length) {
            throw new IllegalArgumentException(
                    "y and u must be of one length, at least 1: " + y.length + ", " + u.length);
        }
        Checks.allFinite(y, "y");
        for (int i = 0; i < u.length; i++) {
            Checks.positive(u[i], "u[" + i + "]");
        }
        for (Column column : columns) {
            if (column.parts().length != y.length) {
                throw new IllegalArgumentException(
                        "a column must have " + y.length + " parts: " + column.parts().length);
            }
        }
        return new LeastSquares(columns, y, u);
    }

    /** The parts in units of their uncertainty, then a row for each unknown's prior, then one more than there are columns. */
    private static double[] over(double[] u, double[] parts, int unknowns) {
        double[] weighted = new double[u.length + unknowns + 1];
        for (int i = 0; i < u.length; i++) {
            weighted[i] = parts[i] / u[i];
        }
        return weighted;
    }

    /** Whether the results tell unknown j apart from those before it. */
    public boolean isDetermined(int j) {
        return determined[j];
    }

    /** Best value of unknown j; 0 when it is not determined. */
    public double value(int j) {
        return values[j];
    }

    /** Standard uncertainty of unknown j, the given ones being trusted; 0 when it is not determined. */
    public double uncertainty(int j) {
        double[] alone = new double[values.length];
        alone[j] = 1;
        return uncertaintyAt(alone);
    }

    /** The sum of squares that was made least, zero or more. */
    public double chiSquare() {
        return chiSquare;
    }

    /** Results less determined free unknowns, zero or more. */
    public int degreesOfFreedom() {
        return degreesOfFreedom;
    }

    /** Height of the fit where it holds these parts of the unknowns, one part for each. */
    public double valueAt(double[] parts) {
        return Triangle.product(values, parts);
    }

    /** Standard uncertainty of that height, the given ones being trusted. */
    public double uncertaintyAt(double[] parts) {
        return Math.sqrt(covarianceOf(parts, parts));
    }

    /** Covariance of the heights at two places. */
    public double covarianceOf(double[] parts, double[] others) {
        double sum = 0;
        for (int k = 0; k < values.length; k++) {
            double one = 0;
            double other = 0;
            for (int i = 0; i <= k; i++) {
                one += parts[i] * inverse[i][k];
                other += others[i] * inverse[i][k];
            }
            sum += one * other;
        }
        return sum;
    }

    /**
     * The straight line along one unknown.
     *
     * @param start parts at x = 0, one for each unknown
     * @param slope the unknown whose part is x; determined
     */
    public LineFit line(double[] start, int slope) {
        double[] along = new double[values.length];
        along[slope] = 1;
        double variance = covarianceOf(along, along);
        double centre = -covarianceOf(start, along) / variance;
        double[] middle = start.clone();
        middle[slope] += centre;
        return new LineFit(
                centre,
                valueAt(middle),
                values[slope],
                uncertaintyAt(middle),
                Math.sqrt(variance),
                chiSquare,
                degreesOfFreedom);
    }
}
