package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plantair.quantity.Length;
import plantair.quantity.PressureUnit;

/** Station pressure from elevation (M3). */
class AtmosphereReferenceTests {

    /**
     * US Standard Atmosphere 1976, table by geometric height (from memory). Tolerance 0.02 %: the equation takes the height
     * for geopotential, which makes 0.018 % at 3,000 m.
     */
    @ParameterizedTest
    @CsvSource({"0, 101325", "1000, 89876", "2000, 79501", "3000, 70121"})
    void agreesWithStandardAtmosphere(double metres, double pascals) {
        assertThat(StandardAtmosphere.stationPressure(new Length(metres)).pascals())
                .isCloseTo(pascals, withinPercentage(0.02));
    }

    /** The same by geopotential height, 11,000 m being the top of the layer (from memory). Half of the last digit. */
    @ParameterizedTest
    @CsvSource({"-500, 107478", "11000, 22632"})
    void agreesWithStandardAtmosphereAtTheEndsOfItsLayer(double metres, double pascals) {
        assertThat(StandardAtmosphere.stationPressure(new Length(metres)).pascals())
                .isCloseTo(pascals, within(1.0));
    }

    /**
     * ASHRAE Fundamentals, psychrometrics, table in inch-pound units, read in a copy. Tolerance 0.02 %: the printed table
     * lies up to that much above the formula printed beside it.
     */
    @ParameterizedTest
    @CsvSource({"1000, 14.175", "2000, 13.664", "3000, 13.173", "5000, 12.230", "10000, 10.108"})
    void agreesWithHandbookInInchPoundUnits(double feet, double psi) {
        double metres = feet * 0.3048;

        assertThat(StandardAtmosphere.stationPressure(new Length(metres)).in(PressureUnit.PSI))
                .isCloseTo(psi, withinPercentage(0.02));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-500.1, 11_000.1})
    void refusesElevationOutsideTheLayer(double metres) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StandardAtmosphere.stationPressure(new Length(metres)))
                .withMessageContaining("-500 to 11000");
    }
}
