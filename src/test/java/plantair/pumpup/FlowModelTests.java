package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static plantair.pumpup.FlowModel.Input.*;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plantair.pumpup.FlowModel.Input;
import plantair.quantity.Temperature;

/** The sensitivities against the derivatives of M7 for dry ideal air, written out by hand (docs/method.md, M20). */
class FlowModelTests {

    private static final double V = 0.227;
    private static final double P1 = 901_325;
    private static final double P2 = 1_101_325;
    private static final double PA = 101_325;
    private static final double T = 50;
    private static final double TA = 293.15;
    private static final double T1 = 295;
    private static final double T2 = 305;
    private static final double B = P2 / T2 - P1 / T1;

    private static FlowModel model(double humidity) {
        return new FlowModel(Compressibility.IDEAL, new double[] {V, P1 - PA, P2 - PA, T, PA, TA, humidity, T1, T2});
    }

    private static double written(Input input) {
        return switch (input) {
            case VOLUME -> 1 / V;
            case ELAPSED -> -1 / T;
            case START -> -1 / (T1 * B);
            case STOP -> 1 / (T2 * B);
            case START_AIR -> P1 / (T1 * T1 * B);
            case STOP_AIR -> -P2 / (T2 * T2 * B);
            case STATION -> -1 / PA + (1 / T2 - 1 / T1) / B;
            case INTAKE -> 1 / TA;
            case HUMIDITY -> 0;
        };
    }

    /** Tolerance 1e-6 relative: the square of the steps. Air of 0.02 % humidity stands for dry air, which costs nothing. */
    @ParameterizedTest
    @CsvSource({"VOLUME", "ELAPSED", "START", "STOP", "START_AIR", "STOP_AIR", "STATION", "INTAKE"})
    void knowsTheDerivativesOfDryAir(Input input) {
        assertThat(model(0).sensitivity(input)).isCloseTo(written(input), withinPercentage(1e-3));
    }

    /** Where neither end is saturated, vapour takes the same part of every pressure and cancels. */
    @Test
    void doesNotMindHumidityBelowSaturation() {
        assertThat(model(0).sensitivity(HUMIDITY)).isCloseTo(0, within(1e-9));
    }

    /** Where both ends are saturated, only the intake is left: es/(Pa − φ es). */
    @ParameterizedTest
    @CsvSource({"0.6", "1"})
    void knowsTheDerivativeOfHumidityWhereWaterCondenses(double humidity) {
        double es = SaturationPressure.at(new Temperature(TA)).pascals();

        assertThat(model(humidity).sensitivity(HUMIDITY)).isCloseTo(es / (PA - humidity * es), withinPercentage(0.01));
    }

    @Test
    void movesInputsTogether() {
        double[] weights = new double[Input.values().length];
        weights[START.ordinal()] = 0.5;
        weights[STOP.ordinal()] = 2;
        weights[INTAKE.ordinal()] = 0;

        assertThat(model(0).sensitivity(weights))
                .isCloseTo(0.5 * written(START) + 2 * written(STOP), withinPercentage(1e-3));
    }

    @Test
    void cancelsAnErrorOfBothReadingsAtOneTemperature() {
        var model = new FlowModel(Compressibility.IDEAL, new double[] {V, 8e5, 10e5, T, PA, TA, 0, TA, TA});
        double[] both = new double[Input.values().length];
        both[START.ordinal()] = 1;
        both[STOP.ordinal()] = 1;

        assertThat(model.sensitivity(both)).isCloseTo(0, within(1e-15));
    }

    /** 8 to 10 bar at 20 °C: 50 % a bar on each pressure, −1.87 % a kelvin of the stop air, +1.53 % of the start air. */
    @Test
    void knowsTheSizesOfANarrowBand() {
        var model = new FlowModel(Compressibility.IDEAL, new double[] {V, 8e5, 10e5, T, PA, TA, 0, TA, TA});

        assertThat(1e5 * model.sensitivity(STOP)).isCloseTo(0.5, within(0.0005));
        assertThat(1e5 * model.sensitivity(START)).isCloseTo(-0.5, within(0.0005));
        assertThat(model.sensitivity(STOP_AIR)).isCloseTo(-0.0187, within(0.0001));
        assertThat(model.sensitivity(START_AIR)).isCloseTo(0.0153, within(0.0001));
    }
}
