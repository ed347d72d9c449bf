package plantair.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class EnteredTests {

    static List<Unit> units() {
        return Unit.all();
    }

    @ParameterizedTest
    @MethodSource("units")
    void returnsFromItsText(Unit unit) {
        Entered entered = new Entered(unit == DurationUnit.MINUTES_SECONDS ? "1:02.40" : "95.0", unit);

        assertThat(Entered.parse(entered.text())).isEqualTo(entered);
    }

    @Test
    void keepsDigitsAsTyped() {
        Entered sharp = new Entered("95.0", PressureUnit.PSI);
        Entered blunt = new Entered("95", PressureUnit.PSI);

        assertThat(sharp.text()).isEqualTo("95.0 [psi]");
        assertThat(blunt.text()).isEqualTo("95 [psi]");
        assertThat(sharp).isNotEqualTo(blunt);
        assertThat(sharp.value()).isEqualTo(blunt.value());
        assertThat(sharp).hasToString("95.0 psi");
    }

    @Test
    void leavesOutBlanksAtTheEnds() {
        assertThat(new Entered(" 95.0\t", PressureUnit.PSI).number()).isEqualTo("95.0");
    }

    @ParameterizedTest
    @CsvSource({"1:02.4, 62.4", "0:05, 5", "12:00, 720", "90:59.999, 5459.999"})
    void readsMinutesAndSeconds(String typed, double seconds) {
        Entered entered = new Entered(typed, DurationUnit.MINUTES_SECONDS);

        assertThat(entered.value()).isCloseTo(seconds, within(1e-9));
        assertThat(Elapsed.of(entered).seconds()).isCloseTo(seconds, within(1e-9));
        assertThat(entered).hasToString(typed + " (m:ss)");
    }

    @ParameterizedTest
    @CsvSource({"-5, -5", ".5, 0.5", "5., 5", "-.25, -0.25", "123456789.123456789, 123456789.123456789"})
    void readsPlainNumbers(String typed, double value) {
        assertThat(new Entered(typed, TemperatureUnit.CELSIUS).value()).isEqualTo(value);
    }

    @Test
    void refusesAColonInOtherUnitsAndItsAbsenceInMinutesAndSeconds() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Entered("1:02", DurationUnit.SECOND));
        assertThatIllegalArgumentException().isThrownBy(() -> new Entered("1:02", PressureUnit.PSI));
        assertThatIllegalArgumentException().isThrownBy(() -> new Entered("62.4", DurationUnit.MINUTES_SECONDS));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "95.0", "95.0 ", "95.0 furlong", "95.0 psi", "x [psi]", " [psi]", "95.0  [psi]"})
    void refusesTextThatItDidNotWrite(String text) {
        assertThatIllegalArgumentException().isThrownBy(() -> Entered.parse(text));
    }

    @Test
    void refusesToBeReadAsAnotherQuantity() {
        Entered psi = new Entered("95.0", PressureUnit.PSI);

        assertThatIllegalArgumentException().isThrownBy(() -> VesselVolume.of(psi));
        assertThatIllegalArgumentException().isThrownBy(() -> Temperature.of(psi));
        assertThatIllegalArgumentException().isThrownBy(() -> ShaftSpeed.of(psi));
        assertThatIllegalArgumentException().isThrownBy(() -> RelativeHumidity.of(new Entered("50", FixedUnit.VOLT)));
        assertThatIllegalArgumentException().isThrownBy(() -> ShaftSpeed.of(new Entered("50", FixedUnit.PERCENT)));
    }

    @Test
    void becomesTheQuantityOfItsUnit() {
        assertThat(RelativeHumidity.of(new Entered("60", FixedUnit.PERCENT)).fraction())
                .isEqualTo(0.6);
        assertThat(ShaftSpeed.of(new Entered("1450", FixedUnit.RPM)).perMinute())
                .isEqualTo(1450);
        assertThat(GaugePressure.of(new Entered("7", PressureUnit.BAR)).pascals())
                .isEqualTo(700_000);
        assertThat(VesselVolume.of(new Entered("500", VolumeUnit.LITRE)).cubicMetres())
                .isEqualTo(0.5);
    }
}
