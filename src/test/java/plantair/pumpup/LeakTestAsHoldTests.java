package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static plantair.quantity.FlowUnit.CFM;
import static plantair.quantity.PressureUnit.PSI;
import static plantair.quantity.TemperatureUnit.FAHRENHEIT;
import static plantair.quantity.VolumeUnit.US_GAL;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import plantair.leak.FittedFall;
import plantair.pumpup.StaticHold.Place;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.FlowBasis;
import plantair.quantity.GaugePressure;

/** A fall of pressure read many times serves as the hold of a pump-up test (M10). */
class LeakTestAsHoldTests {

    private static final double K = 4e-4;

    /** From 170 psig every 30 s with a small wave. */
    private static StaticHold hold(Place place) {
        List<TimedPressure> readings = IntStream.range(0, 11)
                .mapToObj(i -> new TimedPressure(
                        30.0 * i,
                        GaugePressure.of(184.5 * Math.exp(-K * 30 * i) - 14.5 + 0.01 * Math.sin(3.0 * i), PSI)))
                .toList();
        return FittedFall.of(readings, AbsolutePressure.of(14.5, PSI), 0)
                .fall()
                .orElseThrow()
                .asHold(place)
                .orElseThrow();
    }

    private static SampleReadings test() {
        return SampleReadings.in(PSI, FAHRENHEIT)
                .volume(122.1, US_GAL)
                .barometer(14.5)
                .intake(75)
                .run(140, 172, 70.4, 75, 75)
                .rating(175, 35, CFM, FlowBasis.INTAKE);
    }

    private static SampleReadings with(Place place) {
        StaticHold hold = hold(place);
        return test().hold(
                        hold.start().in(PSI), hold.end().in(PSI), hold.waited().seconds(), place);
    }

    /** k V P/Pa at the 156 psig in the middle of the band: 4e-4 · 122.1 gal · 170.5/14.5, by hand 4.6 cfm. */
    @Test
    void addsTheFittedLeak() {
        PumpUpResult result = with(Place.TEST_VOLUME).ideal();
        PumpUpResult without = test().noHold().ideal();

        double expected = K * 60 * 122.1 * 231 / 1728 * 170.5 / 14.5;
        double added = result.freeAir().in(CFM) - without.freeAir().in(CFM);
        assertThat(added).isCloseTo(expected, withinPercentage(0.3));
    }

    @Test
    void neverAddsALeakThroughTheCheckValve() {
        assertThat(with(Place.CHECK_VALVE).ideal().freeAir())
                .isEqualTo(test().noHold().ideal().freeAir());
    }
}
