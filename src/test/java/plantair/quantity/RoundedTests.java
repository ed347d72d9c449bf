package plantair.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Expected texts by hand. */
class RoundedTests {

    @ParameterizedTest
    @CsvSource({
        "21.1345, 4, 21.13",
        "0.5, 4, 0.5000",
        "9.996, 3, 10.0",
        "99.96, 3, 100",
        "1234567, 3, 1230000",
        "0.000123456, 2, 0.00012",
        "-21.1355, 4, -21.14",
        "2.5, 1, 3",
        "0, 5, 0"
    })
    void keepsSignificantDigits(double value, int digits, String text) {
        assertThat(Rounded.significant(value, digits)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"21.125, 2, 21.13", "21, 2, 21.00", "-0.04, 1, 0.0", "1234567.5, 0, 1234568", "-2.5, 0, -3"})
    void keepsDecimalPlaces(double value, int places, String text) {
        assertThat(Rounded.places(value, places)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "21.1345, 0.53, 21.13",
        "21.1345, 5.3, 21.1",
        "21.1345, 53, 21",
        "545.23, 120, 545",
        "21.1345, 0.0996, 21.13",
        "0.0012346, 0.000021, 0.001235"
    })
    void isNoSharperThanTheUncertainty(double value, double u, String text) {
        assertThat(Rounded.toUncertainty(value, u)).isEqualTo(text);
    }

    @Test
    void writesADotWhateverTheLocale() {
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.GERMANY);
        try {
            assertThat(Rounded.places(1234.5, 1)).isEqualTo("1234.5");
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesNumbersThatAreNotFinite(double value) {
        assertThatIllegalArgumentException().isThrownBy(() -> Rounded.significant(value, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> Rounded.places(value, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> Rounded.placesFor(value));
    }

    @Test
    void refusesNoDigitsAndNoUncertainty() {
        assertThatIllegalArgumentException().isThrownBy(() -> Rounded.significant(1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> Rounded.placesFor(0));
    }
}
