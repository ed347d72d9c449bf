package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plantair.quantity.FlowUnit.CFM;
import static plantair.quantity.FlowUnit.LITRE_PER_SECOND;
import static plantair.quantity.PressureUnit.BAR;
import static plantair.quantity.PressureUnit.PSI;
import static plantair.quantity.TemperatureUnit.CELSIUS;
import static plantair.quantity.TemperatureUnit.FAHRENHEIT;
import static plantair.quantity.VolumeUnit.LITRE;
import static plantair.quantity.VolumeUnit.US_GAL;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plantair.quantity.FlowBasis;

/** Runs of one test together (M19), on invented plants whose figures were computed apart from the program; no source. */
class RunAgreementTests {

    /** 500 L, 7.0 to 8.5 bar, 0.985 bar, 22 °C in, receiver air at 35 °C throughout. */
    private static SampleReadings coldStart(double... seconds) {
        SampleReadings test = SampleReadings.in(BAR, CELSIUS)
                .volume(500, LITRE)
                .barometer(0.985)
                .intake(22)
                .rating(7.75, 13.5, LITRE_PER_SECOND, FlowBasis.INTAKE);
        for (double elapsed : seconds) {
            test.run(7.0, 8.5, elapsed, 35, 35);
        }
        return test;
    }

    @Test
    void doesNotAverageRunsThatFall() {
        PumpUpResult result = coldStart(48, 51, 54).ideal();

        assertThat(result.runs())
                .extracting(run -> Math.round(run.freeAir().in(LITRE_PER_SECOND) * 10) / 10.0)
                .containsExactly(15.2, 14.3, 13.5);
        assertThat(result.spread()).isCloseTo(0.12, within(0.005));
        assertThat(result.freeAir()).isNull();
        assertThat(result.findings()).extracting(Finding::code).contains(FindingCode.RUNS_DRIFT);
    }

    @Test
    void averagesRunsThatAgree() {
        PumpUpResult result = coldStart(56.0, 56.4, 56.2).ideal();

        assertThat(result.freeAir().in(LITRE_PER_SECOND)).isCloseTo(13.0, within(0.05));
        assertThat(result.freeAir().in(CFM)).isCloseTo(27.5, within(0.05));
        assertThat(result.spread()).isCloseTo(0.007, within(0.0005));
        assertThat(result.rating().ratio()).isCloseTo(0.96, within(0.005));
    }

    /** Two runs are no trend: they may differ much and are averaged, with a finding on their scatter. */
    @Test
    void averagesTwoRunsHoweverFarApart() {
        PumpUpResult result = coldStart(48, 54).ideal();

        assertThat(result.freeAir()).isNotNull();
        assertThat(result.findings()).extracting(Finding::code).contains(FindingCode.RUNS_SCATTER);
    }

    /** 120 US gal receiver and 2.1 US gal of pipe, 140 to 172 psig, 14.5 psia, intake 75 °F, receiver air 95 °F. */
    private static SampleReadings twoStage(double... seconds) {
        SampleReadings test = SampleReadings.in(PSI, FAHRENHEIT)
                .volume(120, US_GAL)
                .part(VolumePart.Kind.PIPE, 2.1, US_GAL)
                .barometer(14.5)
                .intake(75)
                .rating(175, 35, CFM, FlowBasis.INTAKE);
        for (double elapsed : seconds) {
            test.run(140, 172, elapsed, 95, 95);
        }
        return test;
    }

    @Test
    void findsTheFirstTestOfANewMachine() {
        PumpUpResult result = twoStage(60.2, 60.8, 60.5).ideal();

        assertThat(result.runs())
                .extracting(run -> Math.round(run.freeAir().in(CFM) * 10) / 10.0)
                .containsExactly(34.6, 34.3, 34.4);
        assertThat(result.freeAir().in(CFM)).isCloseTo(34.4, within(0.05));
        assertThat(result.handMethod().in(CFM)).isCloseTo(35.7, within(0.05));
        assertThat(result.spread()).isCloseTo(0.010, within(0.0005));
        assertThat(result.rating().ratio()).isCloseTo(0.98, within(0.005));
    }

    @ParameterizedTest
    @CsvSource({"60.5, 34.4, 100", "62.0, 33.6, 97.6", "64.3, 32.4, 94.1", "68.6, 30.4, 88.2"})
    void followsAMachineThatWears(double seconds, double cfm, double percentOfFirst) {
        double first = twoStage(60.5).ideal().freeAir().in(CFM);

        double flow = twoStage(seconds).ideal().freeAir().in(CFM);

        assertThat(flow).isCloseTo(cfm, within(0.05));
        assertThat(100 * flow / first).isCloseTo(percentOfFirst, within(0.05));
    }

    /** 240 US gal, 100 to 125 psig in 99.4 s a mile above the sea; at 14.7 psia it would read 32.9 cfm, 78 %. */
    @Test
    void findsTheFlowAMileUp() {
        SampleReadings test = SampleReadings.in(PSI, FAHRENHEIT)
                .volume(240, US_GAL)
                .run(100, 125, 99.4, 68, 68)
                .intake(68)
                .rating(112.5, 42, CFM, FlowBasis.INTAKE)
                .elevation(5280 * 0.3048);

        PumpUpResult atHeight = test.ideal();
        PumpUpResult atSeaLevel = test.barometer(14.7).ideal();

        assertThat(atHeight.freeAir().in(CFM)).isCloseTo(40.0, within(0.05));
        assertThat(atHeight.rating().ratio()).isCloseTo(0.95, within(0.005));
        assertThat(atSeaLevel.freeAir().in(CFM)).isCloseTo(32.9, within(0.05));
        assertThat(atSeaLevel.rating().ratio()).isCloseTo(0.78, within(0.005));
        assertThat(atSeaLevel.findings()).extracting(Finding::code).contains(FindingCode.BAROMETER_SUSPECT);
    }
}
