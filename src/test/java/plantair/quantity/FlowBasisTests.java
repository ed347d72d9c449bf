package plantair.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class FlowBasisTests {

    /** ISO 1217, trade handbooks and DIN 1343, all from memory. */
    @ParameterizedTest
    @CsvSource({
        "STANDARD_100KPA_20C_DRY, 100000, 293.15, 0",
        "STANDARD_14_5PSIA_68F_DRY, 99973.98, 293.15, 0",
        "STANDARD_14_7PSIA_68F_36RH, 101352.93, 293.15, 0.36",
        "STANDARD_14_696PSIA_60F_DRY, 101325.35, 288.70556, 0",
        "NORMAL_101_325KPA_0C_DRY, 101325, 273.15, 0"
    })
    void namesTheStateOfAStandardFlow(FlowBasis basis, double pascals, double kelvin, double humidity) {
        StandardState state = basis.state().orElseThrow();

        assertThat(state.pressure().pascals()).isCloseTo(pascals, within(0.005));
        assertThat(state.temperature().kelvin()).isCloseTo(kelvin, within(5e-6));
        assertThat(state.humidity().fraction()).isEqualTo(humidity);
        assertThat(FlowBasis.standards()).contains(basis);
    }

    @ParameterizedTest
    @EnumSource(names = {"INTAKE", "DISPLACEMENT", "UNKNOWN"})
    void namesNoStateForTheOthers(FlowBasis basis) {
        assertThat(basis.state()).isEmpty();
        assertThat(FlowBasis.standards()).doesNotContain(basis);
    }
}
