package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static plantair.quantity.FlowUnit.CFM;
import static plantair.quantity.PressureUnit.PSI;
import static plantair.quantity.TemperatureUnit.FAHRENHEIT;
import static plantair.quantity.VolumeUnit.LITRE;
import static plantair.quantity.VolumeUnit.US_GAL;

import org.junit.jupiter.api.Test;
import plantair.pumpup.StaticHold.Place;
import plantair.pumpup.Uncertainty.Source;
import plantair.quantity.FlowBasis;
import plantair.quantity.PressureDifference;

class HoldLeakTests {

    /** 122.1 US gal, 140 to 172 psig in 70.4 s at 14.5 psia and 75 °F; 170 to 160 psig in 141 s before. Invented. */
    private static SampleReadings passingValve(double air) {
        return SampleReadings.in(PSI, FAHRENHEIT)
                .volume(122.1, US_GAL)
                .barometer(14.5)
                .intake(75)
                .run(140, 172, 70.4, air, air)
                .rating(175, 35, CFM, FlowBasis.INTAKE)
                .hold(170, 160, 141, Place.TEST_VOLUME);
    }

    /** Worked by hand: 4.7 cfm at 165 psig with air of 80 °F, where the hold was made; 4.5 at 156 psig, where the runs are. */
    @Test
    void findsTheLeakOfAPassingValve() {
        HoldLeak leak = passingValve(80).ideal().leak();

        assertThat(leak.perSecond()).isCloseTo(3.952e-4, within(5e-8));
        assertThat(leak.atHold().in(CFM)).isCloseTo(4.7, within(0.05));
        assertThat(leak.inRuns().in(CFM)).isCloseTo(4.5, within(0.05));
        assertThat(leak.inRuns().in(CFM) / leak.atHold().in(CFM))
                .isCloseTo((156 + 14.5) / (165 + 14.5), withinPercentage(1e-8));
    }

    /** With the air of the runs, 95 °F: 29.6 cfm, and 34.0 with the leak at the pressure of the runs. */
    @Test
    void addsTheLeakOfTheTestVolume() {
        PumpUpResult result = passingValve(95).ideal();
        PumpUpResult without = passingValve(95).noHold().ideal();

        assertThat(without.freeAir().in(CFM)).isCloseTo(29.6, within(0.05));
        assertThat(result.leak().added()).isTrue();
        assertThat(result.freeAir().in(CFM)).isCloseTo(34.0, within(0.05));
        assertThat(result.freeAir().in(CFM))
                .isCloseTo(without.freeAir().in(CFM) + result.leak().inRuns().in(CFM), withinPercentage(1e-10));
        assertThat(result.handMethod()).isEqualTo(without.handMethod());
    }

    @Test
    void addsTheLeakToTheRightFigureWhereTheAirWasNotMeasured() {
        PumpUpResult result = passingValve(75).air(AirTemperature.NOT_MEASURED).ideal();
        PumpUpResult without =
                passingValve(75).air(AirTemperature.NOT_MEASURED).noHold().ideal();

        assertThat(result.freeAir().in(CFM))
                .isCloseTo(without.freeAir().in(CFM) + result.leak().inRuns().in(CFM), withinPercentage(1e-10));
    }

    /** 15 % of the leak. */
    @Test
    void isLessSureWithALeak() {
        PumpUpResult result = passingValve(95).ideal();

        double part = result.leak().inRuns().in(CFM) / result.freeAir().in(CFM);
        double needle = Math.sqrt(2) * 3_000 / PressureDifference.of(10, PSI).pascals();
        assertThat(part(result)).isCloseTo(Math.hypot(0.15, needle) * part, withinPercentage(1e-8));
        assertThat(part(passingValve(95).noHold().ideal())).isZero();
    }

    private static double part(PumpUpResult result) {
        return result.uncertainty().components().stream()
                .filter(component -> component.source() == Source.LEAK)
                .mapToDouble(Uncertainty.Component::relative)
                .sum();
    }

    /** It acts only while the machine stands. */
    @Test
    void neverAddsALeakThroughTheCheckValve() {
        PumpUpResult result =
                passingValve(95).hold(170, 160, 141, Place.CHECK_VALVE).ideal();

        assertThat(result.leak().perSecond()).isCloseTo(3.952e-4, within(5e-8));
        assertThat(result.leak().added()).isFalse();
        assertThat(result.freeAir()).isEqualTo(passingValve(95).noHold().ideal().freeAir());
        assertThat(part(result)).isZero();
    }

    @Test
    void takesNothingOffWhereThePressureRose() {
        PumpUpResult result =
                passingValve(95).hold(160, 170, 141, Place.TEST_VOLUME).ideal();

        assertThat(result.leak().perSecond()).isCloseTo(-3.952e-4, within(5e-8));
        assertThat(result.leak().added()).isFalse();
        assertThat(result.freeAir()).isEqualTo(passingValve(95).noHold().ideal().freeAir());
    }

    @Test
    void knowsNoLeakWithoutAHold() {
        assertThat(passingValve(95).noHold().ideal().leak()).isNull();
    }

    /** An isothermal leak through a choked hole, made here step by step: 40 L/min at 8 bar from 0.5 m³. Own. */
    @Test
    void findsTheLeakOfASteppedOutflow() {
        double station = 101_325;
        double k = 40e-3 / 60 * station / (0.5 * 901_325);
        double absolute = 901_325;
        for (int second = 0; second < 600; second++) {
            absolute -= k * absolute;
        }
        assertThat(k).isCloseTo(1.498904e-4, within(5e-11));

        HoldLeak leak = SampleReadings.good()
                .barometer(1.01325)
                .volume(200, LITRE)
                .hold(8, (absolute - station) / 1e5, 600, Place.TEST_VOLUME)
                .ideal()
                .leak();

        assertThat(leak.perSecond()).isCloseTo(k, withinPercentage(0.01));
        assertThat(leak.inRuns().cubicMetresPerSecond())
                .isCloseTo(k * 0.5 * (7.5e5 + station) / station, withinPercentage(0.01));
    }
}
