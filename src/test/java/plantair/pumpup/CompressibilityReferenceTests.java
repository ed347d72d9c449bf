package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Temperature;

/** How far air is from ideal (M6). */
class CompressibilityReferenceTests {

    private static final double MOLAR_GAS_CONSTANT = 8.31446261815324;

    /**
     * Atkins, Physical Chemistry, data section, second virial coefficient of air (table read, attribution from memory), and
     * the one that CIPM-2007 implies at 20 °C (from memory). Tolerance 0.5 cm³/mol, the scatter between such tables: 0.02 %
     * of the stored mass at 1 MPa.
     */
    @ParameterizedTest
    @CsvSource({"273, -13.5", "373, 3.4", "293.15, -8.58"})
    void agreesOnTheSecondVirialCoefficient(double kelvin, double cm3PerMol) {
        double pascals = 1e6;
        double z = Compressibility.DRY_AIR.z(new AbsolutePressure(pascals), new Temperature(kelvin));

        double coefficient = (z - 1) * MOLAR_GAS_CONSTANT * kelvin / pascals * 1e6;

        assertThat(coefficient).isCloseTo(cm3PerMol, within(0.5));
    }

    /**
     * Perry, Chemical Engineers' Handbook, Z of air at 300 K (from memory). Tolerance: four printed digits, and the third
     * virial coefficient that is left out, 0.0002 at 10 bar and 0.0008 at 20 bar.
     */
    @ParameterizedTest
    @CsvSource({"1, 0.9999, 0.0003", "5, 0.9987, 0.0003", "10, 0.9974, 0.0004", "20, 0.9950, 0.0009"})
    void agreesOnTheCompressibilityOfAir(double bar, double z, double tolerance) {
        assertThat(Compressibility.DRY_AIR.z(new AbsolutePressure(bar * 1e5), new Temperature(300)))
                .isCloseTo(z, within(tolerance));
    }

    @Test
    void hasNoneForAnIdealGas() {
        assertThat(Compressibility.IDEAL.z(new AbsolutePressure(2e6), new Temperature(250)))
                .isEqualTo(1);
    }
}
