package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static plantair.pumpup.UnlikelyReading.Code.*;
import static plantair.quantity.VolumeUnit.LITRE;

import java.util.EnumSet;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import plantair.pumpup.UnlikelyReading.Code;
import plantair.pumpup.UnlikelyReading.Reading;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureUnit;

/** Each slip planted in a good test is found at its reading; true readings just inside the limit pass. */
class PlausibilityTests {

    private static final Usual NINE_BAR_FIFTEEN_LITRES =
            new Usual(GaugePressure.of(9, PressureUnit.BAR), FlowRate.of(15, FlowUnit.LITRE_PER_SECOND));
    private static final Usual NOTHING = new Usual(null, null);

    static Stream<Arguments> slips() {
        return Stream.of(
                slip(BAR_PSI_SLIP, Reading.STOP_PRESSURE, 4, test().run(6 * 14.5, 9 * 14.5, 60)),
                slip(BAR_PSI_SLIP, Reading.STOP_PRESSURE, 4, test().run(6 / 14.5, 9 / 14.5, 60)),
                slip(PRESSURE_UNUSUAL, Reading.STOP_PRESSURE, 4, test().run(20, 23, 60)),
                slip(PRESSURE_UNUSUAL, Reading.STOP_PRESSURE, 4, test().run(1, 3.5, 50)),
                slip(MINUTES_SECONDS_SLIP, Reading.ELAPSED, 4, test().run(6, 9, 1)),
                slip(MINUTES_SECONDS_SLIP, Reading.ELAPSED, 4, test().run(6, 9, 3600)),
                slip(TIME_UNUSUAL, Reading.ELAPSED, 4, test().run(6, 9, 14)),
                slip(TIME_UNUSUAL, Reading.ELAPSED, 4, test().run(6, 9, 250)),
                slip(TEMPERATURE_UNUSUAL, Reading.INTAKE_TEMPERATURE, 0, test().intake(72)),
                slip(TEMPERATURE_UNUSUAL, Reading.START_AIR, 4, test().run(6, 9, 60, 95, 40)),
                slip(TEMPERATURE_UNUSUAL, Reading.STOP_AIR, 4, test().run(6, 9, 60, 30, -16)),
                slip(AIR_FAR_FROM_INTAKE, Reading.STOP_AIR, 4, test().run(6, 9, 60, 30, 66)),
                slip(
                        AIR_FAR_FROM_INTAKE,
                        Reading.SETTLED_AIR,
                        1,
                        test().noRuns().air(AirTemperature.SETTLED).settledRun(6, 9, 60, 8.8, 66)),
                slip(
                        SETTLED_ABOVE_STOP,
                        Reading.SETTLED_PRESSURE,
                        1,
                        test().noRuns().air(AirTemperature.SETTLED).settledRun(6, 9, 60, 9.01, 21)),
                slip(BAROMETER_SUSPECT, Reading.BAROMETER, 0, test().elevation(800)),
                slip(
                        ABOVE_MAWP,
                        Reading.STOP_PRESSURE,
                        1,
                        test().noRuns().run(6, 9, 60).allowable(8.9)));
    }

    private static Arguments slip(Code code, Reading reading, int run, SampleReadings planted) {
        return Arguments.of(code, reading, run, planted.readings());
    }

    private static SampleReadings test() {
        return SampleReadings.good();
    }

    @ParameterizedTest
    @MethodSource("slips")
    void findsASlip(Code code, Reading reading, int run, PumpUpReadings readings) {
        List<UnlikelyReading> found = Plausibility.check(readings, NINE_BAR_FIFTEEN_LITRES);

        assertThat(found).hasSize(1);
        assertThat(found.get(0).code()).isEqualTo(code);
        assertThat(found.get(0).reading()).isEqualTo(reading);
        assertThat(found.get(0).run()).isEqualTo(run);
        assertThat(found.get(0).figures()).isNotEmpty();
    }

    @Test
    void hasASlipForEveryCode() {
        assertThat(slips().map(planted -> (Code) planted.get()[0]).toList())
                .containsAll(EnumSet.complementOf(EnumSet.of(Code.BAND_CHANGED)));
    }

    @Test
    void asksWhenTheMarksAreNotThoseOfTheLastTest() {
        var last = new Usual(
                GaugePressure.of(9, PressureUnit.BAR),
                FlowRate.of(15, FlowUnit.LITRE_PER_SECOND),
                new Usual.Band(GaugePressure.of(6, PressureUnit.BAR), GaugePressure.of(9, PressureUnit.BAR)));

        assertThat(Plausibility.check(test().noRuns().run(6.5, 9, 50).readings(), last))
                .extracting(UnlikelyReading::code)
                .containsExactly(Code.BAND_CHANGED);
        assertThat(Plausibility.check(test().noRuns().run(6.4, 9, 52).readings(), last))
                .isEmpty();
    }

    static Stream<PumpUpReadings> trueReadings() {
        return Stream.of(
                test().readings(),
                test().run(6, 9, 16).run(6, 9, 235).readings(),
                test().run(6, 22, 320).readings(),
                test().run(1, 3.7, 54).readings(),
                test().intake(-24).noRuns().run(6, 9, 60, 5, 20).readings(),
                test().intake(51).noRuns().run(6, 9, 60, 60, 79).readings(),
                test().run(6, 9, 60, 30, 64).readings(),
                test().elevation(300).readings(),
                test().noRuns()
                        .air(AirTemperature.SETTLED)
                        .settledRun(6, 9, 60, 9, 20)
                        .readings(),
                test().allowable(9).readings(),
                test().volume(0.5, LITRE).readings());
    }

    @ParameterizedTest
    @MethodSource("trueReadings")
    void letsTrueReadingsPass(PumpUpReadings readings) {
        assertThat(Plausibility.check(readings, NINE_BAR_FIFTEEN_LITRES)).isEmpty();
    }

    @Test
    void saysNothingOnPressureAndTimeOfAnUnknownMachine() {
        PumpUpReadings odd = test().run(60, 90, 1).readings();

        assertThat(Plausibility.check(odd, NOTHING)).isEmpty();
    }

    /** A pressure in the wrong unit makes the time look wrong as well; only the cause is named. */
    @Test
    void namesTheCauseNotItsConsequence() {
        PumpUpReadings slip = test().noRuns().run(87, 130.5, 60).allowable(11).readings();

        assertThat(Plausibility.check(slip, NINE_BAR_FIFTEEN_LITRES))
                .extracting(UnlikelyReading::code)
                .containsExactly(BAR_PSI_SLIP);
    }
}
