package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plantair.quantity.PowerUnit;

final class MotorDrawTests {

    /**
     * Full-load currents of US National Electrical Code tables 430.250 (three phases) and 430.248 (one phase). They size
     * conductors, so the power lies near the rated one only with a power factor and an efficiency usual for the size (common
     * practice, no source); within a quarter.
     */
    @ParameterizedTest
    @CsvSource({"460,7.6,3,0.82,0.87,5", "460,14,3,0.84,0.895,10", "230,28,3,0.84,0.895,10", "230,28,1,0.87,0.80,5"})
    void liesNearTheRatedPowerAtFullLoadCurrent(
            double volts, double amps, int phases, double powerFactor, double efficiency, double horsepower) {
        var draw = new MotorDraw(volts, amps, phases, powerFactor, efficiency);

        assertThat(draw.shaftPower().in(PowerUnit.HP)).isCloseTo(horsepower, within(0.25 * horsepower));
    }

    /** By hand: 400 V × 10 A × 1.7320508 × 0.8 × 0.9 = 4,988.306 W. */
    @Test
    void multipliesByTheRootOfThreePhases() {
        assertThat(new MotorDraw(400, 10, 3, 0.8, 0.9).shaftPower().watts()).isCloseTo(4988.306, within(0.001));
        assertThat(new MotorDraw(230, 10, 1, 0.8, 0.9).shaftPower().watts()).isCloseTo(1656, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "0,1,3,0.8,0.9",
        "NaN,1,3,0.8,0.9",
        "400,0,3,0.8,0.9",
        "400,1,2,0.8,0.9",
        "400,1,3,0,0.9",
        "400,1,3,1.1,0.9",
        "400,1,3,0.8,0",
        "400,1,3,0.8,1.1",
        "400,1,3,NaN,0.9"
    })
    void refusesWhatNoMotorHas(double volts, double amps, int phases, double powerFactor, double efficiency) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MotorDraw(volts, amps, phases, powerFactor, efficiency));
    }
}
