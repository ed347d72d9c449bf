package plantair.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * Worked examples of JCGM 100:2008, annex H, and of two guides built on it. The JCGM documents were not opened: what they
 * print was read in public example programs unless marked as from memory. "Unrounded" is own arithmetic by a separate
 * program. The tables under reference/statistics name the sources of their data.
 */
class GumReferenceTests {

    private static final double ENDLESS = Double.POSITIVE_INFINITY;

    /** H.1, length of an end gauge, in nanometres and kelvin; printed 25, 9.7, 2.9 and 16.6 nm, together 32 nm. */
    @Test
    void combinesTheContributionsOfTheEndGauge() {
        double[] contributions = endGauge();

        double combined = LinearPropagation.combined(contributions);

        assertThat(contributions[0]).isEqualTo(25);
        assertThat(contributions[1]).isCloseTo(9.7, within(0.05));
        assertThat(contributions[2]).isCloseTo(2.9, within(0.05));
        assertThat(contributions[3]).isCloseTo(16.6, within(0.05));
        assertThat(combined).as("printed").isCloseTo(32, within(0.5));
        assertThat(combined).as("unrounded").isCloseTo(31.664, within(5e-4));
    }

    /**
     * H.1: u(d) of 5.8 (24), 3.9 (5) and 6.7 nm (8) has 25.6 degrees, for which the annex used the rounded 9.7 nm; the length
     * has 16, and ± 93 nm at 99 %.
     */
    @Test
    void findsTheDegreesOfFreedomOfTheEndGauge() {
        double[] contributions = endGauge();

        EffectiveDegrees difference = EffectiveDegrees.of(new double[] {5.8, 3.9, 6.7}, new double[] {24, 5, 8});
        EffectiveDegrees length = EffectiveDegrees.of(contributions, new double[] {18, difference.unrounded(), 50, 2});

        double expanded = length.coverageFactor(0.99) * LinearPropagation.combined(contributions);
        double roundedUp = 9.7 / contributions[1];
        assertThat(difference.unrounded()).as("unrounded").isCloseTo(25.447, within(5e-4));
        assertThat(difference.unrounded() * Math.pow(roundedUp, 4))
                .as("printed")
                .isCloseTo(25.6, within(0.05));
        assertThat(length.unrounded()).as("unrounded").isCloseTo(16.75, within(0.005));
        assertThat(length.truncated()).isEqualTo(16);
        assertThat(length.coverageFactor(0.99)).isCloseTo(2.92, within(0.005));
        assertThat(expanded).as("printed, from rounded figures").isCloseTo(93, within(1.0));
        assertThat(expanded).as("unrounded").isCloseTo(92.48, within(0.005));
    }

    /** H.1.7: second-order terms of 11.7 and 1.7 nm make it 34 nm. */
    @Test
    void takesFurtherContributionsOfTheEndGauge() {
        double first = LinearPropagation.combined(endGauge());

        assertThat(LinearPropagation.combined(first, 11.7, 1.7)).isCloseTo(34, within(0.5));
    }

    /** The same length by sensitivities: l = l_S + d − l_S (δα θ + α δθ), with θ = −0.1 K and α = 11.5e-6/K. */
    private static double[] endGauge() {
        double length = 50.000623e6;
        return new double[] {
            25,
            LinearPropagation.combined(5.8, 3.9, 6.7),
            length * 0.1 * TypeB.rectangular(1e-6),
            length * 11.5e-6 * TypeB.rectangular(0.05)
        };
    }

    @Test
    void carriesCovariancesFromVoltageCurrentAndPhaseToImpedance() {
        ReferenceTable table = ReferenceTable.read("gum_h2.csv");
        double[][] readings = {table.column("V_volt"), table.column("I_mA"), table.column("phi_rad")};

        Covariance impedance = LinearPropagation.of(impedanceSensitivities(readings), u(readings), r(readings));

        assertThat(impedance.size()).isEqualTo(3);
        assertThat(impedance.standardUncertainty(0)).as("printed").isCloseTo(0.071, within(5e-4));
        assertThat(impedance.standardUncertainty(1)).as("printed").isCloseTo(0.295, within(1e-3));
        assertThat(impedance.standardUncertainty(2)).as("printed").isCloseTo(0.236, within(5e-4));
        assertThat(impedance.correlation(0, 1)).as("printed").isCloseTo(-0.588, within(5e-4));
        assertThat(impedance.correlation(0, 2)).as("printed").isCloseTo(-0.485, within(5e-4));
        assertThat(impedance.correlation(1, 2)).as("printed").isCloseTo(0.993, within(5e-4));
        assertThat(impedance.standardUncertainty(0)).as("unrounded").isCloseTo(0.07107, within(5e-6));
        assertThat(impedance.standardUncertainty(1)).as("unrounded").isCloseTo(0.29558, within(5e-6));
        assertThat(impedance.standardUncertainty(2)).as("unrounded").isCloseTo(0.23634, within(5e-6));
        assertThat(impedance.correlation(0, 1)).as("unrounded").isCloseTo(-0.58843, within(5e-6));
        assertThat(impedance.correlation(0, 2)).as("unrounded").isCloseTo(-0.48526, within(5e-6));
        assertThat(impedance.correlation(1, 2)).as("unrounded").isCloseTo(0.99251, within(5e-6));
    }

    /** R = V/I cos φ, X = V/I sin φ, Z = V/I, in ohm; the current in milliampere. */
    private static double[][] impedanceSensitivities(double[][] readings) {
        double v = Repeats.of(readings[0]).mean();
        double i = Repeats.of(readings[1]).mean() / 1000;
        double phi = Repeats.of(readings[2]).mean();
        double z = v / i;
        double r = z * Math.cos(phi);
        double x = z * Math.sin(phi);
        return new double[][] {
            {r / v, -r / i / 1000, -x},
            {x / v, -x / i / 1000, r},
            {z / v, -z / i / 1000, 0}
        };
    }

    /** Standard uncertainties of the means. */
    private static double[] u(double[][] readings) {
        return Arrays.stream(readings)
                .mapToDouble(series -> Repeats.of(series).standardDeviation() / Math.sqrt(series.length))
                .toArray();
    }

    private static double[][] r(double[][] readings) {
        double[][] r = new double[readings.length][readings.length];
        for (int i = 0; i < readings.length; i++) {
            r[i][i] = 1;
            for (int j = 0; j < i; j++) {
                r[i][j] = correlation(Repeats.of(readings[i]), readings[i], Repeats.of(readings[j]), readings[j]);
                r[j][i] = r[i][j];
            }
        }
        return r;
    }

    private static double correlation(Repeats a, double[] as, Repeats b, double[] bs) {
        double sum = 0;
        for (int k = 0; k < as.length; k++) {
            sum += (as[k] - a.mean()) * (bs[k] - b.mean());
        }
        return sum / (as.length - 1) / a.standardDeviation() / b.standardDeviation();
    }

    /** H.3: intercept at 20 °C and slope of the thermometer's line; printed 0.0029, 0.00067 and r = −0.930. */
    @Test
    void givesTheLineOfTheThermometerItsUncertainties() {
        double[] t = ReferenceTable.read("gum_h3.csv").column("t_degC");
        double s = thermometer().birgeRatio();

        Covariance line = LinearPropagation.of(lineSensitivities(t), filled(t.length, s));

        assertThat(line.standardUncertainty(0)).as("printed").isCloseTo(0.0029, within(5e-5));
        assertThat(line.standardUncertainty(1)).as("printed").isCloseTo(0.00067, within(5e-6));
        assertThat(line.correlation(0, 1)).as("printed").isCloseTo(-0.930, within(5e-4));
        assertThat(line.standardUncertainty(0)).as("unrounded").isCloseTo(0.00287759784, within(5e-12));
        assertThat(line.standardUncertainty(1)).as("unrounded").isCloseTo(0.00066793877, within(5e-12));
        assertThat(line.correlation(0, 1)).as("unrounded").isCloseTo(-0.93043, within(5e-6));
        assertThat(line.standardUncertainty(0))
                .as("WeightedLine")
                .isCloseTo(s * thermometer().uncertaintyAt(20), within(1e-15));
    }

    /** H.3.6: 0.005 °C common to all readings, as one more input: the intercept has it, the slope does not feel it. */
    @Test
    void keepsAnErrorCommonToAllReadingsOutOfTheSlope() {
        double[] t = ReferenceTable.read("gum_h3.csv").column("t_degC");
        double[] u = Arrays.copyOf(filled(t.length, thermometer().birgeRatio()), t.length + 1);
        u[t.length] = 0.005;
        double[][] sensitivities = lineSensitivities(t);
        double[] intercept = Arrays.copyOf(sensitivities[0], t.length + 1);
        intercept[t.length] = 1;
        double[] slope = Arrays.copyOf(sensitivities[1], t.length + 1);

        Covariance line = LinearPropagation.of(new double[][] {intercept, slope}, u);

        assertThat(line.standardUncertainty(0)).as("printed").isCloseTo(0.0058, within(5e-5));
        assertThat(line.standardUncertainty(0)).as("unrounded").isCloseTo(0.00576893, within(5e-9));
        assertThat(line.standardUncertainty(1)).as("unchanged").isCloseTo(0.0006679388, within(5e-11));
    }

    /** H.3.6 again, the common error now as correlation of the readings. */
    @Test
    void findsTheSameWhenReadingsAreCorrelatedByTheirCommonError() {
        double[] t = ReferenceTable.read("gum_h3.csv").column("t_degC");
        double s = thermometer().birgeRatio();
        double each = LinearPropagation.combined(s, 0.005);
        double[][] r = new double[t.length][t.length];
        for (int i = 0; i < t.length; i++) {
            Arrays.fill(r[i], 0.005 * 0.005 / (each * each));
            r[i][i] = 1;
        }

        Covariance line = LinearPropagation.of(lineSensitivities(t), filled(t.length, each), r);

        assertThat(line.standardUncertainty(0)).isCloseTo(0.00576893, within(5e-9));
        assertThat(line.standardUncertainty(1)).isCloseTo(0.0006679388, within(5e-11));
    }

    private static LineFit thermometer() {
        ReferenceTable table = ReferenceTable.read("gum_h3.csv");
        double[] t = table.column("t_degC");
        return WeightedLine.fit(t, table.column("b_degC"), filled(t.length, 1));
    }

    /** How the height at 20 and the slope of an unweighted line answer to each reading. */
    private static double[][] lineSensitivities(double[] t) {
        double mean = Repeats.of(t).mean();
        double squares =
                Arrays.stream(t).map(value -> (value - mean) * (value - mean)).sum();
        double[] slope = Arrays.stream(t).map(value -> (value - mean) / squares).toArray();
        double[] at20 = Arrays.stream(slope)
                .map(part -> 1.0 / t.length + part * (20 - mean))
                .toArray();
        return new double[][] {at20, slope};
    }

    private static double[] filled(int length, double value) {
        double[] values = new double[length];
        Arrays.fill(values, value);
        return values;
    }

    /**
     * EURACHEM/CITAC, Quantifying Uncertainty in Analytical Measurement, A1: a cadmium standard c = 1000 m P/V of 1002.7
     * mg/L. 0.835 as read in a public example program; the guide prints 0.9, having rounded u(V) to 0.07.
     */
    @Test
    void givesTheCadmiumStandardItsUncertainty() {
        double c = 1000 * 100.28 * 0.9999 / 100;
        double volume = LinearPropagation.combined(TypeB.triangular(0.1), 0.02, TypeB.rectangular(0.084));

        double[] sensitivities = {c / 100.28, c / 0.9999, -c / 100};
        double unrounded = standard(sensitivities, 0.05, TypeB.rectangular(0.0001), volume);
        double rounded = standard(sensitivities, 0.05, TypeB.rectangular(0.0001), 0.07);

        assertThat(c).isCloseTo(1002.7, within(0.05));
        assertThat(unrounded).isCloseTo(0.835, within(5e-4));
        assertThat(rounded).as("printed").isCloseTo(0.9, within(0.05));
        assertThat(rounded).as("unrounded from there").isCloseTo(0.8637, within(5e-5));
    }

    private static double standard(double[] sensitivities, double... u) {
        return LinearPropagation.of(new double[][] {sensitivities}, u).standardUncertainty(0);
    }

    /**
     * JCGM 101:2008, 9.2.3 and 9.2.4, from memory: the sum of four rectangular quantities of u = 1, and with one of u = 10
     * in the place of one of them. Linear propagation with the normal factor gives ± 3.92 and ± 19.9 at 95 %, which is wider
     * than the true ± 3.88 and ± 17.0: known, and on the safe side.
     */
    @Test
    void sumsFourRectangularQuantities() {
        double one = TypeB.rectangular(Math.sqrt(3));
        double ten = TypeB.rectangular(10 * Math.sqrt(3));
        double k = new EffectiveDegrees(ENDLESS).coverageFactor(0.95);

        double alike = LinearPropagation.combined(one, one, one, one);
        double unlike = LinearPropagation.combined(one, one, one, ten);

        assertThat(alike).isCloseTo(2.0, within(1e-15));
        assertThat(k * alike).isCloseTo(3.92, within(5e-3));
        assertThat(unlike).as("printed").isCloseTo(10.1, within(0.05));
        assertThat(unlike).as("√103").isCloseTo(10.15, within(5e-3));
        assertThat(k * unlike).isCloseTo(19.9, within(0.05));
    }
}
