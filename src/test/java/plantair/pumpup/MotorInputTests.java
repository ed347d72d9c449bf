package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plantair.quantity.Power;
import plantair.quantity.PowerUnit;

/** Power of a motor from its terminals (M17). */
class MotorInputTests {

    /** By hand: 230 · 10 · 0.8; 1.7320508 · 400 · 10 · 0.8. */
    @Test
    void countsThePhases() {
        assertThat(MotorInput.electrical(230, 10, 1, 0.8).watts()).isCloseTo(1840, within(1e-9));
        assertThat(MotorInput.electrical(400, 10, 3, 0.8).watts()).isCloseTo(5542.5626, within(1e-4));
    }

    /**
     * NEC tables 430.248 and 430.250, full-load currents for sizing conductors, read in copies. They are on the safe
     * side, so shaft power over V I lies between 0.39 and 0.85; without √3, or with it on one phase, it would not.
     */
    @ParameterizedTest
    @CsvSource({
        "1, 230, 8, 1",
        "3, 230, 17, 1",
        "5, 230, 28, 1",
        "10, 230, 50, 1",
        "3, 230, 9.6, 3",
        "5, 230, 15.2, 3",
        "5, 460, 7.6, 3",
        "10, 460, 14, 3",
        "20, 460, 27, 3"
    })
    void agreesWithTablesOfMotorCurrents(double horsepower, double volts, double amps, int phases) {
        double apparent = MotorInput.electrical(volts, amps, phases, 1).watts();
        double ratio = Power.of(horsepower, PowerUnit.HP).watts() / apparent;

        assertThat(ratio).isBetween(0.39, 0.85);
    }

    @Test
    void takesTheLossesOff() {
        assertThat(MotorInput.shaft(new Power(5000), 0.9).watts()).isCloseTo(4500, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"0, 1, 1, 1", "230, -1, 1, 1", "230, 1, 2, 1", "230, 1, 3, 0", "230, 1, 3, 1.01", "NaN, 1, 1, 1"})
    void refusesWhatIsOutsideItsRange(double volts, double amps, int phases, double powerFactor) {
        assertThatIllegalArgumentException().isThrownBy(() -> MotorInput.electrical(volts, amps, phases, powerFactor));
    }

    @ParameterizedTest
    @CsvSource({"0", "1.01", "NaN"})
    void refusesEfficiencyOutsideItsRange(double efficiency) {
        assertThatIllegalArgumentException().isThrownBy(() -> MotorInput.shaft(new Power(1), efficiency));
    }
}
