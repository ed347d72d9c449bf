package plantair.statistics;

import java.util.Arrays;

/**
 * The straight line through points whose y has a known standard uncertainty and whose x is exact (T2).
 *
 * <p>With w = 1/u², x̄ = Σwx/Σw and ȳ = Σwy/Σw the slope is b = Σw(x−x̄)(y−ȳ)/Σw(x−x̄)². Means are taken first and sums
 * of deviations second; sums of raw products would lose digits where x or y is large against its range.
 *
 * <p>Source: weighted least squares as in any text, here after JCGM 100:2008 annex H.3 (from memory), with weights.
 *
 * <p>Checked by: WeightedLineReferenceTests.
 */
public final class WeightedLine {

    private WeightedLine() {}

    /**
     * Fits the line.
     *
     * @param x exact abscissae, at least two and not all equal
     * @param y ordinates, one for each x
     * @param u standard uncertainty of each y in the unit of y, above zero
     * @return the line, its uncertainties taken from u alone
     * @throws IllegalArgumentException when the arrays differ in length, hold fewer than two points or a number that is
     *     not finite, when u is not above zero, when all x are equal, or when a sum is too large or small for a double
     */
    public static LineFit fit(double[] x, double[] y, double[] u) {
        requirePoints(x, y, u);
        int n = x.length;
        double[] w = new double[n];
        double weight = 0;
        double wx = 0;
        double wy = 0;
        for (int i = 0; i < n; i++) {
            w[i] = 1 / (u[i] * u[i]);
            weight += w[i];
            wx += w[i] * x[i];
            wy += w[i] * y[i];
        }
        double centre = wx / weight;
        double level = wy / weight;

        double sxx = 0;
        double sxy = 0;
        for (int i = 0; i < n; i++) {
            double dx = x[i] - centre;
            sxx += w[i] * dx * dx;
            sxy += w[i] * dx * (y[i] - level);
        }
        double slope = sxy / sxx;

        double chiSquare = 0;
        for (int i = 0; i < n; i++) {
            double residual = y[i] - level - slope * (x[i] - centre);
            chiSquare += w[i] * residual * residual;
        }
        return new LineFit(centre, level, slope, 1 / Math.sqrt(weight), 1 / Math.sqrt(sxx), chiSquare, n - 2);
    }

    private static void requirePoints(double[] x, double[] y, double[] u) {
        if (x.length < 2 || y.length != x.length || u.length != x.length) {
            throw new IllegalArgumentException(
                    "x, y and u must be of one length, at least 2: " + x.length + ", " + y.length + ", " + u.length);
        }
        Checks.allFinite(x, "x");
        Checks.allFinite(y, "y");
        for (int i = 0; i < u.length; i++) {
            Checks.positive(u[i], "u[" + i + "]");
        }
        // asked of x itself: the weighted mean of equal x may differ from them in the last digit
        if (Arrays.stream(x).distinct().count() < 2) {
            throw new IllegalArgumentException("x must not all be equal: " + x[0]);
        }
    }
}
