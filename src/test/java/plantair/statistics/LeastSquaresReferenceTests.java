package plantair.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sources, status and tolerances stand in the head of each table under reference/statistics. */
class LeastSquaresReferenceTests {

    private static final double PERCENT_OF_1E_10 = 1e-8;

    @Test
    void agreesWithNistNorris() {
        ReferenceTable norris = ReferenceTable.read("nist_strd_norris.csv");
        double[] x = norris.column("x");

        LeastSquares fit = LeastSquares.fit(List.of(ones(36), Column.free(x)), norris.column("y"), filled(36, 1));

        double s = Math.sqrt(fit.chiSquare() / fit.degreesOfFreedom());
        assertThat(fit.degreesOfFreedom()).isEqualTo(34);
        assertThat(fit.value(0)).isCloseTo(-0.262323073774029, withinPercentage(PERCENT_OF_1E_10));
        assertThat(s * fit.uncertainty(0)).isCloseTo(0.232818234301152, withinPercentage(PERCENT_OF_1E_10));
        assertThat(fit.value(1)).isCloseTo(1.00211681802045, withinPercentage(PERCENT_OF_1E_10));
        assertThat(s * fit.uncertainty(1)).isCloseTo(0.429796848199937E-03, withinPercentage(PERCENT_OF_1E_10));
        assertThat(s).isCloseTo(0.884796396144373, withinPercentage(PERCENT_OF_1E_10));
    }

    @Test
    void agreesWithNistLineThroughTheOrigin() {
        ReferenceTable noint = ReferenceTable.read("nist_strd_noint1.csv");

        LeastSquares fit = LeastSquares.fit(List.of(Column.free(noint.column("x"))), noint.column("y"), filled(11, 1));

        double s = Math.sqrt(fit.chiSquare() / fit.degreesOfFreedom());
        assertThat(fit.degreesOfFreedom()).isEqualTo(10);
        assertThat(fit.value(0)).isCloseTo(2.07438016528926, withinPercentage(PERCENT_OF_1E_10));
        assertThat(s * fit.uncertainty(0)).isCloseTo(0.0165289256198347, withinPercentage(PERCENT_OF_1E_10));
        assertThat(s).isCloseTo(3.56753034006338, withinPercentage(PERCENT_OF_1E_10));
    }

    @Test
    void agreesWithTheWeightedLineOnPearsonsData() {
        ReferenceTable pearson = ReferenceTable.read("pearson_york_y_weights.csv");
        double[] x = pearson.column("x");
        double[] y = pearson.column("y");
        double[] u = Arrays.stream(pearson.column("weight_y"))
                .map(w -> 1 / Math.sqrt(w))
                .toArray();

        LineFit line = LeastSquares.fit(List.of(ones(10), Column.free(x)), y, u).line(new double[] {1, 0}, 1);

        LineFit weighted = WeightedLine.fit(x, y, u);
        assertThat(line.valueAt(0)).isCloseTo(6.10010931667, within(5e-12));
        assertThat(line.uncertaintyAt(0)).isCloseTo(0.2046626858, within(5e-11));
        assertThat(line.slope()).isCloseTo(-0.61081295658, within(5e-12));
        assertThat(line.uSlope()).isCloseTo(0.0300874488, within(5e-11));
        assertThat(line.chiSquare()).isCloseTo(34.3452075, within(5e-8));
        assertThat(line.centre()).isCloseTo(weighted.centre(), within(1e-12));
        assertThat(line.level()).isCloseTo(weighted.level(), within(1e-12));
        assertThat(line.uLevel()).isCloseTo(weighted.uLevel(), within(1e-12));
        assertThat(line.degreesOfFreedom()).isEqualTo(weighted.degreesOfFreedom());
    }

    /**
     * GUM, H.3.6: an error of 0.005 °C that all corrections share makes the uncertainty of the intercept √(0.0029² + 0.005²)
     * = 0.0058 and leaves the slope as it is. More digits by a separate program.
     */
    @Test
    void agreesWithGumThermometerExampleUnderACommonError() {
        ReferenceTable gum = ReferenceTable.read("gum_h3.csv");
        double[] above20 = Arrays.stream(gum.column("t_degC")).map(t -> t - 20).toArray();
        double[] b = gum.column("b_degC");
        List<Column> line = List.of(ones(11), Column.free(above20));
        LeastSquares plain = LeastSquares.fit(line, b, filled(11, 1));
        double s = Math.sqrt(plain.chiSquare() / 9);

        LeastSquares shared = LeastSquares.fit(
                List.of(ones(11), Column.free(above20), Column.sharedError(0.005, filled(11, 1))), b, filled(11, s));

        assertThat(s * plain.uncertainty(0)).isCloseTo(0.00287760, within(5e-9));
        assertThat(shared.uncertainty(0)).isCloseTo(0.0058, within(5e-5)).isCloseTo(0.00576893, within(5e-9));
        assertThat(shared.value(0)).isCloseTo(-0.1712, within(5e-5)).isCloseTo(-0.17120379013, within(5e-12));
        assertThat(shared.value(1)).isCloseTo(0.0021826977, within(5e-11));
        assertThat(shared.uncertainty(1)).isCloseTo(0.0006679388, within(5e-11));
        assertThat(shared.degreesOfFreedom()).isEqualTo(9);
    }

    private static Column ones(int count) {
        return Column.free(filled(count, 1));
    }

    private static double[] filled(int count, double value) {
        double[] values = new double[count];
        Arrays.fill(values, value);
        return values;
    }
}
