package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static plantair.quantity.PressureUnit.BAR;
import static plantair.quantity.PressureUnit.PSI;
import static plantair.quantity.TemperatureUnit.FAHRENHEIT;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plantair.quantity.FlowUnit;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureDifference;
import plantair.quantity.VolumeUnit;

class GaugeAccuracyTests {

    private static GaugeAccuracy gauge(GaugeError... errors) {
        return new GaugeAccuracy(difference(16), 0.016, difference(0.1), List.of(errors));
    }

    private static PressureDifference difference(double bar) {
        return PressureDifference.of(bar, BAR);
    }

    private static GaugeError error(double reading, double high) {
        return new GaugeError(GaugePressure.of(reading, BAR), difference(high));
    }

    /** Points out of order; straight between them, and beyond them as at the last. */
    @ParameterizedTest
    @CsvSource({
        "0, -0.1",
        "2, 1.9",
        "3, 2.95",
        "4, 4",
        "7, 6.85",
        "10, 9.7",
        "11, 10.9",
        "12, 12.1",
        "13, 13.1",
        "16, 16.1"
    })
    void takesOffTheErrorsOfTheCertificate(double reading, double trueBar) {
        GaugeAccuracy gauge = gauge(error(10, 0.3), error(2, 0.1), error(12, -0.1), error(4, 0));

        double corrected = gauge.corrected(GaugePressure.of(reading, BAR)).pascals() / 1e5;

        assertThat(corrected).isCloseTo(trueBar, within(1e-9));
    }

    @Test
    void takesOffOneErrorEverywhere() {
        GaugeAccuracy gauge = gauge(error(7, 0.2));

        assertThat(gauge.corrected(GaugePressure.of(1, BAR)).pascals()).isCloseTo(0.8e5, within(1e-6));
        assertThat(gauge.corrected(GaugePressure.of(7, BAR)).pascals()).isCloseTo(6.8e5, within(1e-6));
        assertThat(gauge.corrected(GaugePressure.of(9, BAR)).pascals()).isCloseTo(8.8e5, within(1e-6));
    }

    @Test
    void leavesReadingsWithoutACertificate() {
        assertThat(gauge().corrected(GaugePressure.of(7, BAR))).isEqualTo(GaugePressure.of(7, BAR));
    }

    /** Class 1.6 of 16 bar: 0.256 bar; half of 0.1 bar over root three. */
    @Test
    void knowsItsLimitAndItsReading() {
        assertThat(gauge().limitPa()).isCloseTo(25_600, within(1e-9));
        assertThat(gauge().readingU()).isCloseTo(2886.75, within(0.005));
    }

    @Test
    void refusesAGaugeWithoutSpanLimitOrDivision() {
        assertThatIllegalArgumentException().isThrownBy(() -> accuracy(0, 0.01, 0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> accuracy(16, 0, 0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> accuracy(16, 1, 0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> accuracy(16, 0.01, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> accuracy(16, Double.NaN, 0.1));
    }

    private static GaugeAccuracy accuracy(double span, double part, double division) {
        return new GaugeAccuracy(difference(span), part, difference(division), List.of());
    }

    /**
     * A gauge that reads 4 psi high at 175 and right at 135: 135 to 175 psig in 80 s into 122.1 US gal at 14.6 psia read as
     * 33.5 cfm, and was 30.2. Invented; the figures are arithmetic.
     */
    @Test
    void restatesATestWhenTheGaugeWasWrong() {
        SampleReadings test = SampleReadings.in(PSI, FAHRENHEIT)
                .volume(122.1, VolumeUnit.US_GAL)
                .barometer(14.6)
                .intake(68)
                .run(135, 175, 80)
                .gauge(300, 0.005, 1);
        PumpUpResult asRead = test.ideal();
        PumpUpResult restated = test.gauge(300, 0.005, 1, test.error(175, 4), test.error(135, 0))
                .ideal();

        assertThat(asRead.freeAir().in(FlowUnit.CFM)).isCloseTo(33.5, within(0.05));
        assertThat(restated.freeAir().in(FlowUnit.CFM)).isCloseTo(30.2, within(0.05));
        assertThat(restated.handMethod().in(FlowUnit.CFM)).isCloseTo(30.2, within(0.05));
        assertThat(restated.midPressure()).isEqualTo(GaugePressure.of(153, PSI));
        assertThat(restated.working().get(0).equation()).isEqualTo("M0");
        assertThat(asRead.working()).extracting(WorkingStep::equation).doesNotContain("M0");
    }

    @Test
    void takesTheErrorsOffTheHoldAndTheSettledReading() {
        SampleReadings test = SampleReadings.good();
        PumpUpReadings corrected = test.noRuns()
                .air(AirTemperature.SETTLED)
                .settledRun(6, 9, 60, 8.7, 21)
                .hold(9, 8, 300, StaticHold.Place.TEST_VOLUME)
                .gauge(16, 0.0025, 0.02, test.error(8, 0.2), test.error(9, 0.4))
                .readings()
                .corrected();

        StaticHold hold = corrected.circumstances().hold();
        RunReadings run = corrected.runs().get(0);
        assertThat(hold.start().pascals()).isCloseTo(8.6e5, within(1e-6));
        assertThat(hold.end().pascals()).isCloseTo(7.8e5, within(1e-6));
        assertThat(run.start().pascals()).isCloseTo(5.8e5, within(1e-6));
        assertThat(run.stop().pascals()).isCloseTo(8.6e5, within(1e-6));
        assertThat(run.settled().pascals()).isCloseTo(8.36e5, within(1e-6));
    }
}
