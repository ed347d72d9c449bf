package plantair.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plantair.quantity.DurationUnit.MINUTE;
import static plantair.quantity.FlowUnit.CFM;
import static plantair.quantity.PressureUnit.PSI;
import static plantair.quantity.VolumeUnit.US_GAL;

import org.junit.jupiter.api.Test;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.MeasuredFlow;
import plantair.quantity.VesselVolume;

/** An event with steady use, leaks and capacity; invented, worked by hand. */
class AirEventTests {

    private static final StoredAir BAND =
            new StoredAir(AbsolutePressure.of(14.7, PSI), GaugePressure.of(110, PSI), GaugePressure.of(90, PSI));

    private static MeasuredFlow cfm(double value, double relativeU) {
        return MeasuredFlow.of(FlowRate.of(value, CFM), relativeU, FlowBasis.INTAKE);
    }

    private static AirEvent event(double event, double steady, MeasuredFlow leaks, MeasuredFlow capacity) {
        return new AirEvent(BAND, FlowRate.of(event, CFM), FlowRate.of(steady, CFM), leaks, capacity);
    }

    /** 90 + 20 + 10 less 100 are 20 short: as an event of 20 alone without supply. */
    @Test
    void countsAllThatTakesAir() {
        AirEvent all = event(90, 20, cfm(10, 0), cfm(100, 0));
        AirEvent bare = event(20, 0, cfm(0, 0), cfm(0, 0));
        VesselVolume volume = VesselVolume.of(240, US_GAL);

        assertThat(all.shortfall().in(CFM)).isCloseTo(20, within(1e-9));
        assertThat(all.goesOn().in(CFM)).isCloseTo(30, within(1e-9));
        assertThat(all.holds(volume).orElseThrow().seconds())
                .isCloseTo(bare.holds(volume).orElseThrow().seconds(), within(1e-6));
        assertThat(all.volumeFor(Elapsed.of(2, MINUTE)).cubicMetres())
                .isCloseTo(bare.volumeFor(Elapsed.of(2, MINUTE)).cubicMetres(), within(1e-9));
        assertThat(all.refills(volume)).isEqualTo(BAND.holds(volume, FlowRate.of(100, CFM), all.goesOn()));
        assertThat(bare.refills(volume)).isEmpty();
    }

    /** Capacity 100 ± 3, leaks 40 ± 4: √(9 + 16) = 5 of 50 that are short. */
    @Test
    void isAsUnsureAsCapacityAndLeaks() {
        AirEvent event = event(110, 0, cfm(40, 0.1), cfm(100, 0.03));

        assertThat(event.relativeU()).isCloseTo(5.0 / 50, within(1e-12));
        assertThat(event(10, 0, cfm(0, 0), cfm(100, 0.03)).relativeU()).isZero();
    }

    /** 10 % of what is needed: told beyond 1.645 of that, 16.45 %. */
    @Test
    void saysWhetherAVolumeIsEnoughOnlyWhereThatCanBeTold() {
        AirEvent event = event(110, 0, cfm(40, 0.1), cfm(100, 0.03));
        Elapsed time = Elapsed.of(2, MINUTE);
        double needed = event.volumeFor(time).cubicMetres();

        assertThat(event.carried(new VesselVolume(1.17 * needed), time)).isEqualTo(Margin.Verdict.ENOUGH);
        assertThat(event.carried(new VesselVolume(1.16 * needed), time)).isEqualTo(Margin.Verdict.CANNOT_BE_TOLD);
        assertThat(event.carried(new VesselVolume(0.84 * needed), time)).isEqualTo(Margin.Verdict.CANNOT_BE_TOLD);
        assertThat(event.carried(new VesselVolume(0.83 * needed), time)).isEqualTo(Margin.Verdict.NOT_ENOUGH);
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> event(0, 0, cfm(0, 0), cfm(0, 0))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> event(1, -1, cfm(0, 0), cfm(0, 0))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> event(1, 0, cfm(0, 0), MeasuredFlow.of(FlowRate.of(1, CFM), 0, FlowBasis.UNKNOWN)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
