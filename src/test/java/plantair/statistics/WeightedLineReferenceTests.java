package plantair.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Sources, status and tolerances stand in the head of each table under reference/statistics. */
class WeightedLineReferenceTests {

    private static final double PERCENT_OF_1E_10 = 1e-8;

    @Test
    void agreesWithNistNorris() {
        ReferenceTable norris = ReferenceTable.read("nist_strd_norris.csv");

        LineFit fit = unweighted(norris.column("x"), norris.column("y"));

        double s = fit.birgeRatio();
        assertThat(fit.degreesOfFreedom()).isEqualTo(34);
        assertThat(fit.slope()).isCloseTo(1.00211681802045, withinPercentage(PERCENT_OF_1E_10));
        assertThat(s * fit.uSlope()).isCloseTo(0.429796848199937E-03, withinPercentage(PERCENT_OF_1E_10));
        assertThat(fit.valueAt(0)).isCloseTo(-0.262323073774029, withinPercentage(PERCENT_OF_1E_10));
        assertThat(s * fit.uncertaintyAt(0)).isCloseTo(0.232818234301152, withinPercentage(PERCENT_OF_1E_10));
        assertThat(s).isCloseTo(0.884796396144373, withinPercentage(PERCENT_OF_1E_10));
    }

    @Test
    void agreesWithPearsonDataUnderYorksWeights() {
        ReferenceTable pearson = ReferenceTable.read("pearson_york_y_weights.csv");
        double[] u = Arrays.stream(pearson.column("weight_y"))
                .map(w -> 1 / Math.sqrt(w))
                .toArray();

        LineFit fit = WeightedLine.fit(pearson.column("x"), pearson.column("y"), u);

        assertThat(fit.valueAt(0)).isCloseTo(6.10010931667, within(5e-10));
        assertThat(fit.slope()).isCloseTo(-0.61081295658, within(5e-10));
        assertThat(fit.uncertaintyAt(0)).isCloseTo(0.2046626858, within(5e-10));
        assertThat(fit.uSlope()).isCloseTo(0.0300874488, within(5e-10));
        assertThat(fit.chiSquare()).isCloseTo(34.3452075, within(5e-8));
        assertThat(fit.birgeRatio()).isCloseTo(2.071992, within(5e-7));
        assertThat(fit.birgeRatio() * fit.uSlope()).isCloseTo(0.06234095394, within(5e-10));
        assertThat(fit.valueAt(8)).isCloseTo(1.213605664, within(5e-9));
    }

    @Test
    void givesRsStudentIntervalWhereScatterIsLargerThanStated() {
        ReferenceTable pearson = ReferenceTable.read("pearson_york_y_weights.csv");
        double[] u = Arrays.stream(pearson.column("weight_y"))
                .map(w -> 1 / Math.sqrt(w))
                .toArray();
        LineFit fit = WeightedLine.fit(pearson.column("x"), pearson.column("y"), u);

        PooledScatter pooled = fit.pooled(4);

        double half = pooled.coverageFactor(0.95) * pooled.s();
        assertThat(pooled.guardFired()).isTrue();
        assertThat(pooled.degreesOfFreedom()).isEqualTo(8);
        assertThat(fit.slope() - half * fit.uSlope()).isCloseTo(-0.7545714542, within(1e-8));
        assertThat(fit.slope() + half * fit.uSlope()).isCloseTo(-0.467054459, within(1e-8));
        assertThat(fit.valueAt(8) - half * fit.uncertaintyAt(8)).isCloseTo(0.9612438521, within(1e-8));
        assertThat(fit.valueAt(8) + half * fit.uncertaintyAt(8)).isCloseTo(1.465967476, within(1e-8));
    }

    @Test
    void agreesWithGumThermometerExample() {
        ReferenceTable gum = ReferenceTable.read("gum_h3.csv");

        LineFit fit = unweighted(gum.column("t_degC"), gum.column("b_degC"));

        double s = fit.birgeRatio();
        assertThat(fit.degreesOfFreedom()).isEqualTo(9);
        assertThat(s).isCloseTo(0.0035, within(5e-5));
        assertThat(fit.valueAt(20)).isCloseTo(-0.1712, within(5e-5));
        assertThat(s * fit.uncertaintyAt(20)).isCloseTo(0.0029, within(5e-5));
        assertThat(fit.slope()).isCloseTo(0.00218, within(5e-6));
        assertThat(s * fit.uSlope()).isCloseTo(0.00067, within(5e-6));
        assertThat(fit.valueAt(30)).isCloseTo(-0.1494, within(5e-5));
        assertThat(s * fit.uncertaintyAt(30)).isCloseTo(0.0041, within(5e-5));
    }

    private static LineFit unweighted(double[] x, double[] y) {
        double[] ones = new double[x.length];
        Arrays.fill(ones, 1);
        return WeightedLine.fit(x, y, ones);
    }
}
