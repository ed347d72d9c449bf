package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Length;
import plantair.quantity.LengthUnit;
import plantair.quantity.PressureUnit;

class StationTests {

    private static final Length A_MILE = Length.of(5280, LengthUnit.FOOT);
    private static final AbsolutePressure READ = new AbsolutePressure(96_000);
    private static final AbsolutePressure USUAL = new AbsolutePressure(97_000);

    @Test
    void takesTheBarometerBeforeTheSite() {
        var station = new Station(READ, USUAL, new Length(400));

        assertThat(station.pressure()).isEqualTo(READ);
        assertThat(station.expected()).isEqualTo(USUAL);
        assertThat(station.isFromElevation()).isFalse();
    }

    @Test
    void takesTheUsualBarometerBeforeTheElevation() {
        var station = new Station(null, USUAL, new Length(400));

        assertThat(station.pressure()).isEqualTo(USUAL);
        assertThat(station.isFromElevation()).isFalse();
    }

    /** Own arithmetic with M3; 12.10 psia. */
    @Test
    void takesTheElevationWhereNothingElseIsKnown() {
        var station = new Station(null, null, A_MILE);

        assertThat(station.pressure().in(PressureUnit.PSI)).isCloseTo(12.10, within(0.005));
        assertThat(station.isFromElevation()).isTrue();
        assertThat(station.isSuspect()).isFalse();
    }

    @Test
    void takesTheBarometerAloneForGranted() {
        var station = new Station(READ, null, null);

        assertThat(station.expected()).isEqualTo(READ);
        assertThat(station.isSuspect()).isFalse();
    }

    /** The weather report's barometer at a mile up is reduced to sea level. The limit is 4 %. */
    @ParameterizedTest
    @CsvSource({"29.92, true", "25.7, true", "25.5, false", "24.64, false", "23.7, false", "23.6, true"})
    void suspectsABarometerReducedToSeaLevel(double inchesOfMercury, boolean suspect) {
        var station = new Station(AbsolutePressure.of(inchesOfMercury, PressureUnit.IN_HG), null, A_MILE);

        assertThat(station.isSuspect()).isEqualTo(suspect);
    }

    @Test
    void refusesToKnowNothing() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Station(null, null, null));
    }
}
