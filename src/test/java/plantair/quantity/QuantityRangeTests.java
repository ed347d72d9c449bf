package plantair.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class QuantityRangeTests {

    private static final Map<String, DoubleFunction<?>> ANY_SIGN =
            Map.of("gauge", GaugePressure::new, "difference", PressureDifference::new, "flow", FlowRate::new);

    private static final Map<String, DoubleFunction<?>> ZERO_OR_MORE = Map.of(
            "vessel",
            VesselVolume::new,
            "air",
            FreeAirVolume::new,
            "power",
            Power::new,
            "humidity",
            RelativeHumidity::new);

    private static final Map<String, DoubleFunction<?>> ABOVE_ZERO = Map.of(
            "absolute", AbsolutePressure::new,
            "temperature", Temperature::new,
            "elapsed", Elapsed::new,
            "speed", ShaftSpeed::new);

    static Stream<DoubleFunction<?>> all() {
        return Stream.of(ANY_SIGN, ZERO_OR_MORE, ABOVE_ZERO).flatMap(map -> map.values().stream());
    }

    static Stream<DoubleFunction<?>> notBelowZero() {
        return Stream.of(ZERO_OR_MORE, ABOVE_ZERO).flatMap(map -> map.values().stream());
    }

    static Stream<DoubleFunction<?>> aboveZero() {
        return ABOVE_ZERO.values().stream();
    }

    @ParameterizedTest
    @MethodSource("all")
    void refusesNumbersThatAreNotFinite(DoubleFunction<?> quantity) {
        assertThatIllegalArgumentException().isThrownBy(() -> quantity.apply(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> quantity.apply(Double.POSITIVE_INFINITY));
        assertThatIllegalArgumentException().isThrownBy(() -> quantity.apply(Double.NEGATIVE_INFINITY));
    }

    @ParameterizedTest
    @MethodSource("notBelowZero")
    void refusesLessThanNothing(DoubleFunction<?> quantity) {
        assertThatIllegalArgumentException().isThrownBy(() -> quantity.apply(-1e-9));
    }

    @ParameterizedTest
    @MethodSource("aboveZero")
    void refusesZeroWhereThereMustBeSomething(DoubleFunction<?> quantity) {
        assertThatIllegalArgumentException().isThrownBy(() -> quantity.apply(0));
    }

    @Test
    void refusesHumidityAboveSaturation() {
        assertThat(new RelativeHumidity(1).fraction()).isEqualTo(1);
        assertThatIllegalArgumentException().isThrownBy(() -> new RelativeHumidity(1.000001));
    }

    @Test
    void refusesATemperatureBelowAbsoluteZero() {
        assertThatIllegalArgumentException().isThrownBy(() -> Temperature.of(-460, TemperatureUnit.FAHRENHEIT));
        assertThatIllegalArgumentException().isThrownBy(() -> Temperature.of(-273.15, TemperatureUnit.CELSIUS));
    }

    /** By hand: 95 psi over 14.6 psia is 109.6 psia; 125 − 95 is 30 psi, their middle 110 psi. */
    @Test
    void keepsGaugeAndAbsolutePressureApart() {
        GaugePressure start = GaugePressure.of(95, PressureUnit.PSI);
        GaugePressure stop = GaugePressure.of(125, PressureUnit.PSI);
        AbsolutePressure barometer = AbsolutePressure.of(14.6, PressureUnit.PSI);

        AbsolutePressure absolute = start.above(barometer);

        assertThat(absolute.in(PressureUnit.PSI)).isCloseTo(109.6, within(1e-12));
        assertThat(absolute.gaugeAt(barometer).in(PressureUnit.PSI)).isCloseTo(95, within(1e-12));
        assertThat(stop.minus(start).in(PressureUnit.PSI)).isCloseTo(30, within(1e-12));
        assertThat(GaugePressure.mid(start, stop).in(PressureUnit.PSI)).isCloseTo(110, within(1e-12));
    }

    @Test
    void refusesAVacuumDeeperThanTheAtmosphere() {
        AbsolutePressure barometer = AbsolutePressure.of(14.6, PressureUnit.PSI);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> GaugePressure.of(-14.7, PressureUnit.PSI).above(barometer));
    }
}
