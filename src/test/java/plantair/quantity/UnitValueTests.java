package plantair.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Factors as printed in NIST SP 811, appendix B, from memory; half of the last printed digit. */
class UnitValueTests {

    private static final double TYPED = 87.65;

    @ParameterizedTest
    @CsvSource({
        "PSI, 6.894757E+03, 5E-4",
        "BAR, 1E+05, 0",
        "KPA, 1E+03, 0",
        "KGF_CM2, 9.80665E+04, 1E-10",
        "IN_HG, 3.386389E+03, 5E-4",
        "HPA, 1E+02, 0"
    })
    void convertsPressure(PressureUnit unit, double pascals, double tolerance) {
        assertThat(GaugePressure.of(1, unit).pascals()).isCloseTo(pascals, within(tolerance));
        assertThat(AbsolutePressure.of(1, unit).pascals()).isCloseTo(pascals, within(tolerance));
        assertThat(PressureDifference.of(1, unit).pascals()).isCloseTo(pascals, within(tolerance));
    }

    @ParameterizedTest
    @CsvSource({"US_GAL, 3.785412E-03, 5E-10", "LITRE, 1E-03, 0", "CUBIC_FOOT, 2.831685E-02, 5E-9", "CUBIC_METRE, 1, 0"
    })
    void convertsVolume(VolumeUnit unit, double cubicMetres, double tolerance) {
        assertThat(VesselVolume.of(1, unit).cubicMetres()).isCloseTo(cubicMetres, within(tolerance));
        assertThat(FreeAirVolume.of(1, unit).cubicMetres()).isCloseTo(cubicMetres, within(tolerance));
    }

    @ParameterizedTest
    @CsvSource({
        "CFM, 4.719474E-04, 5E-11",
        "LITRE_PER_SECOND, 1E-03, 0",
        "LITRE_PER_MINUTE, 1.666667E-05, 5E-12",
        "CUBIC_METRE_PER_MINUTE, 1.666667E-02, 5E-9",
        "CUBIC_METRE_PER_HOUR, 2.777778E-04, 5E-11"
    })
    void convertsFlow(FlowUnit unit, double cubicMetresPerSecond, double tolerance) {
        assertThat(FlowRate.of(1, unit).cubicMetresPerSecond()).isCloseTo(cubicMetresPerSecond, within(tolerance));
    }

    @ParameterizedTest
    @CsvSource({
        "FAHRENHEIT, 32, 273.15",
        "FAHRENHEIT, 212, 373.15",
        "FAHRENHEIT, -40, 233.15",
        "CELSIUS, -40, 233.15",
        "CELSIUS, 20, 293.15",
        "KELVIN, 293.15, 293.15"
    })
    void convertsTemperature(TemperatureUnit unit, double value, double kelvin) {
        assertThat(Temperature.of(value, unit).kelvin()).isCloseTo(kelvin, within(1e-12 * kelvin));
    }

    @ParameterizedTest
    @CsvSource({"FOOT, 0.3048", "METRE, 1", "INCH, 0.0254", "MILLIMETRE, 0.001"})
    void convertsLength(LengthUnit unit, double metres) {
        assertThat(Length.of(1, unit).metres()).isEqualTo(metres);
    }

    @ParameterizedTest
    @CsvSource({"HP, 7.456999E+02, 5E-5", "KW, 1E+03, 0"})
    void convertsPower(PowerUnit unit, double watts, double tolerance) {
        assertThat(Power.of(1, unit).watts()).isCloseTo(watts, within(tolerance));
    }

    @ParameterizedTest
    @CsvSource({"SECOND, 1", "MINUTE, 60", "MINUTES_SECONDS, 1"})
    void convertsDuration(DurationUnit unit, double seconds) {
        assertThat(Elapsed.of(1, unit).seconds()).isEqualTo(seconds);
    }

    /** 231 in³ of 1,728 in³. */
    @Test
    void makesCubicFeetOfGallons() {
        double cubicFeet = VesselVolume.of(1, VolumeUnit.US_GAL).in(VolumeUnit.CUBIC_FOOT);

        assertThat(cubicFeet).isCloseTo(0.133680555, within(1e-9));
        assertThat(cubicFeet).isCloseTo(231.0 / 1728, within(1e-16));
    }

    @Test
    void makesLitresASecondOfCfm() {
        assertThat(FlowRate.of(1, FlowUnit.CFM).in(FlowUnit.LITRE_PER_SECOND)).isCloseTo(0.471947443, within(5e-10));
    }

    @Test
    void makesPascalsOfTheTradesStandardPressure() {
        assertThat(AbsolutePressure.of(14.5, PressureUnit.PSI).pascals()).isCloseTo(99_973.98, within(0.005));
    }

    /** Standard atmosphere, 101,325 Pa: 14.69595 psi, 29.92126 inHg, 1.033227 kgf/cm² (from memory). */
    @Test
    void givesTheStandardAtmosphereInEachUnit() {
        AbsolutePressure atmosphere = AbsolutePressure.of(1013.25, PressureUnit.HPA);

        assertThat(atmosphere.in(PressureUnit.PSI)).isCloseTo(14.69595, within(5e-6));
        assertThat(atmosphere.in(PressureUnit.IN_HG)).isCloseTo(29.92126, within(5e-6));
        assertThat(atmosphere.in(PressureUnit.KGF_CM2)).isCloseTo(1.033227, within(5e-7));
    }

    @ParameterizedTest
    @EnumSource
    void returnsThePressureTyped(PressureUnit unit) {
        assertThat(GaugePressure.of(TYPED, unit).in(unit)).isCloseTo(TYPED, withinPercentage(1e-13));
        assertThat(AbsolutePressure.of(TYPED, unit).in(unit)).isCloseTo(TYPED, withinPercentage(1e-13));
        assertThat(PressureDifference.of(TYPED, unit).in(unit)).isCloseTo(TYPED, withinPercentage(1e-13));
    }

    @ParameterizedTest
    @EnumSource
    void returnsTheVolumeTyped(VolumeUnit unit) {
        assertThat(VesselVolume.of(TYPED, unit).in(unit)).isCloseTo(TYPED, withinPercentage(1e-13));
        assertThat(FreeAirVolume.of(TYPED, unit).in(unit)).isCloseTo(TYPED, withinPercentage(1e-13));
    }

    @ParameterizedTest
    @EnumSource
    void returnsTheFlowTyped(FlowUnit unit) {
        assertThat(FlowRate.of(TYPED, unit).in(unit)).isCloseTo(TYPED, withinPercentage(1e-13));
    }

    @ParameterizedTest
    @EnumSource
    void returnsTheTemperatureTyped(TemperatureUnit unit) {
        assertThat(Temperature.of(TYPED, unit).in(unit)).isCloseTo(TYPED, withinPercentage(1e-12));
    }

    @ParameterizedTest
    @EnumSource
    void returnsTheDurationTyped(DurationUnit unit) {
        assertThat(Elapsed.of(TYPED, unit).in(unit)).isCloseTo(TYPED, withinPercentage(1e-13));
    }

    @ParameterizedTest
    @EnumSource
    void returnsTheLengthTyped(LengthUnit unit) {
        assertThat(Length.of(TYPED, unit).in(unit)).isCloseTo(TYPED, withinPercentage(1e-13));
    }

    @ParameterizedTest
    @EnumSource
    void returnsThePowerTyped(PowerUnit unit) {
        assertThat(Power.of(TYPED, unit).in(unit)).isCloseTo(TYPED, withinPercentage(1e-13));
    }
}
