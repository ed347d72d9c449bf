package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plantair.pumpup.ReferenceRows.number;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureUnit;
import plantair.quantity.RelativeHumidity;
import plantair.quantity.Temperature;
import plantair.quantity.VesselVolume;
import plantair.quantity.VolumeUnit;

/** The lumped model M9. Sources and tolerances stand in the head of receiver_warming.csv. */
class ReceiverWarmingTests {

    private static final double AMBIENT_K = 293.15;

    static List<Map<String, String>> fills() {
        return ReferenceRows.read("receiver_warming.csv").rows();
    }

    @ParameterizedTest
    @MethodSource("fills")
    void agreesWithIndependentIntegration(Map<String, String> row) {
        WarmingFactor warming = factor(row);

        assertThat(warming.factor()).isCloseTo(number(row, "factor"), within(1e-5));
        assertThat(warming.warming()).isCloseTo(number(row, "warming_K"), within(0.001));
    }

    /** u of the flow, which goes with 1/F. By h: half the change between half and twice; by inlet: that over root three. */
    @ParameterizedTest
    @MethodSource("fills")
    void agreesWithIndependentIntegrationOnItsUncertainty(Map<String, String> row) {
        double transfer = halfWidth(row, "factor_h10", "factor_h40");
        double inlet = halfWidth(row, "factor_in0", "factor_in40");

        WarmingFactor warming = factor(row);

        double f = number(row, "factor");
        assertThat(warming.relativeShared())
                .isCloseTo(f * Math.sqrt(transfer * transfer + inlet * inlet / 3), within(1e-5));
        assertThat(warming.relativeRandom())
                .isCloseTo(f * halfWidth(row, "factor_start_cool", "factor_start_warm"), within(1e-5));
    }

    private static double halfWidth(Map<String, String> row, String one, String other) {
        return Math.abs(1 / number(row, one) - 1 / number(row, other)) / 2;
    }

    /** Own simulation of the same model with its assumptions drawn at random; no published source. */
    @ParameterizedTest
    @MethodSource("fills")
    void liesWithinOwnSimulation(Map<String, String> row) {
        WarmingFactor warming = factor(row);

        assertThat(warming.factor()).isCloseTo(number(row, "simulated_factor"), within(number(row, "simulated_u")));
        assertThat(warming.warming())
                .isCloseTo(number(row, "simulated_warming_K"), within(number(row, "simulated_u_warming_K")));
    }

    /** A fill so slow that the air has time to cool stores what cool air would; the inlet's heat leaves through the shell. */
    @Test
    void comesToNoCorrectionForASlowFill() {
        assertThat(factor(1000, 0, 7, 48 * 3600).factor()).isBetween(1.0, 1.002);
    }

    /** First law for an insulated receiver: F = (c_p/c_v) T_in/T_1, with T_in 20 K above ambient. */
    @ParameterizedTest
    @CsvSource({"0, 7", "6, 7", "8, 10"})
    void comesUpToTheInsulatedReceiverForAFastFill(double start, double stop) {
        double insulated = 1005 / (1005 - 287.055) * (AMBIENT_K + 20) / AMBIENT_K;

        double f = factor(10_000, start, stop, 0.5).factor();

        assertThat(f).isLessThan(insulated).isCloseTo(insulated, within(0.01));
    }

    @Test
    void fallsAsTheFillTakesLonger() {
        double[] factors = new double[] {10, 30, 100, 300, 1000, 3000};
        for (int i = 0; i < factors.length; i++) {
            factors[i] = factor(500, 4, 7, factors[i]).factor();
        }

        for (int i = 1; i < factors.length; i++) {
            assertThat(factors[i]).isBetween(1.0, factors[i - 1]);
        }
    }

    /** Vessels so small or times so long that the air follows the shell at once: stiff for an explicit rule. */
    @ParameterizedTest
    @CsvSource({"1, 0, 7, 3600", "0.1, 6, 9, 600", "5, 8, 10, 36000", "100000, 0, 12, 36000"})
    void staysWithinTheLawsOfHeat(double litres, double start, double stop, double seconds) {
        WarmingFactor warming = factor(litres, start, stop, seconds);

        assertThat(warming.factor()).isBetween(1.0, 1.5);
        assertThat(warming.warming()).isBetween(0.0, 100.0);
        assertThat(warming.relativeShared()).isBetween(0.0, 0.2);
        assertThat(warming.relativeRandom()).isBetween(0.0, 0.2);
    }

    /** Where the air starts 3 K warm and cools, it loses more pressure than a very narrow band rises. */
    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.1, 0.05, 0.02})
    void findsAFlowForANarrowBand(double rise) {
        WarmingFactor warming = factor(200, 8, 8 + rise, 30);

        double wide = factor(200, 8, 8.6, 30).factor();
        assertThat(warming.factor()).isBetween(1.0, wide + 0.2);
        assertThat(warming.relativeRandom()).isPositive().isLessThan(10);
        assertThat(warming.relativeRandom() * rise)
                .as("the same leftover of pressure whatever the band")
                .isCloseTo(factor(200, 8, 8.6, 30).relativeRandom() * 0.6, within(0.02));
    }

    private static WarmingFactor factor(Map<String, String> row) {
        return factor(number(row, "volume_L"), number(row, "p1_bar"), number(row, "p2_bar"), number(row, "elapsed_s"));
    }

    private static WarmingFactor factor(double litres, double start, double stop, double seconds) {
        return ReceiverWarming.factor(
                VesselVolume.of(litres, VolumeUnit.LITRE),
                RunReadings.of(
                        GaugePressure.of(start, PressureUnit.BAR),
                        GaugePressure.of(stop, PressureUnit.BAR),
                        new Elapsed(seconds)),
                new Intake(new AbsolutePressure(101_325), new Temperature(AMBIENT_K), new RelativeHumidity(0)));
    }
}
