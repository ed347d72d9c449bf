package plantair.pumpup;

import java.util.List;
import java.util.stream.IntStream;
import plantair.quantity.GaugePressure;
import plantair.statistics.Column;
import plantair.statistics.LeastSquares;

/**
 * Time as a polynomial of pressure about a pressure p*: t = a0 + a1 x + a2 x² …, x = p − p*, by ordinary least squares (S2).
 * Time is fitted on pressure, not the other way, since then the flow at p* is in a1 alone.
 */
final class TimeCurve {

    private static final double SCALE_PA = 1e5;
    private static final int CHECKED = 20;

    private final LeastSquares fit;
    private final int degree;
    private final double scatter;

    private TimeCurve(LeastSquares fit, int degree) {
        this.fit = fit;
        this.degree = degree;
        this.scatter = StrictMath.sqrt(fit.chiSquare() / fit.degreesOfFreedom());
    }

    /** Fits; needs more points, and more different pressures, than the degree has terms. */
    static TimeCurve fit(List<TimedPressure> points, GaugePressure about, int degree) {
        double first = points.get(0).seconds();
        double[] y =
                points.stream().mapToDouble(point -> point.seconds() - first).toArray();
        double[] u = points.stream().mapToDouble(point -> 1).toArray();
        double[] x = points.stream()
                .mapToDouble(point -> (point.pascals() - about.pascals()) / SCALE_PA)
                .toArray();
        List<Column> columns = IntStream.rangeClosed(0, degree)
                .mapToObj(power -> Column.free(powers(x, power)))
                .toList();
        return new TimeCurve(LeastSquares.fit(columns, y, u), degree);
    }

    private static double[] powers(double[] x, int power) {
        double[] parts = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            parts[i] = 1;
            for (int k = 0; k < power; k++) {
                parts[i] *= x[i];
            }
        }
        return parts;
    }

    /** a1, s/Pa. */
    double slope() {
        return fit.value(1) / SCALE_PA;
    }

    /** u(a1), s/Pa, from the scatter. */
    double uSlope() {
        return scatter * fit.uncertainty(1) / SCALE_PA;
    }

    /** Standard deviation of the times about the curve, s. */
    double scatter() {
        return scatter;
    }

    int degreesOfFreedom() {
        return fit.degreesOfFreedom();
    }

    /** The last term over its standard uncertainty. */
    double lastTerm() {
        double u = scatter * fit.uncertainty(degree);
        return u > 0 ? fit.value(degree) / u : 0;
    }

    /** Whether the curve goes up all the way between two distances from p*, Pa. */
    boolean risesBetween(double fromPa, double toPa) {
        return IntStream.rangeClosed(0, CHECKED)
                .mapToDouble(i -> (fromPa + (toPa - fromPa) * i / CHECKED) / SCALE_PA)
                .allMatch(x -> steepness(x) > 0);
    }

    private double steepness(double x) {
        double sum = 0;
        for (int power = degree; power >= 1; power--) {
            sum = sum * x + power * fit.value(power);
        }
        return sum;
    }
}
