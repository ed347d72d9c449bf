package plantair.leak;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plantair.quantity.FlowUnit.CFM;
import static plantair.quantity.FlowUnit.CUBIC_METRE_PER_MINUTE;

import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.MeasuredFlow;

/** Leak by load and unload times, against printed examples. */
class LoadShareTests {

    private static final LoadCycle NIGHT = new LoadCycle(90, 410, 0);

    private static MeasuredFlow cfm(double flow, double relativeU) {
        return MeasuredFlow.of(FlowRate.of(flow, CFM), relativeU, FlowBasis.INTAKE);
    }

    /** Bureau of Energy Efficiency (India), from memory: 1.5 min on, 10.5 off, 35 m³/min: 4.375 m³/min, 6300 m³ a day. */
    @Test
    void agreesWithAnEnergyAuditGuide() {
        LoadShare share = LoadShare.of(List.of(new LoadCycle(90, 630, 0)));
        var capacity = MeasuredFlow.of(FlowRate.of(35, CUBIC_METRE_PER_MINUTE), 0, FlowBasis.INTAKE);

        double leak = share.leak(capacity).flow().in(CUBIC_METRE_PER_MINUTE);

        assertThat(share.share()).isEqualTo(0.125);
        assertThat(leak).isCloseTo(4.375, within(1e-12));
        assertThat(leak * 60 * 24).isCloseTo(6300, within(1e-8));
    }

    /** Training page of a vendor (read in a copy): 8 min on, 48 unloaded, 900 cfm; prints 14.2 % and 127.8 cfm, cut short. */
    @Test
    void agreesWithATrainingExampleThatCutItsDigits() {
        LoadShare share = LoadShare.of(List.of(new LoadCycle(480, 2880, 0)));

        assertThat(Math.floor(share.share() * 1000) / 1000).isEqualTo(0.142);
        assertThat(share.leak(cfm(900, 0)).flow().in(CFM)).isCloseTo(128.57, within(5e-3));
    }

    /** Own: 90/500 is 18 %, 37.8 of 210 cfm; after repairs 45/700, 6.4 %, 13.5 cfm. */
    @ParameterizedTest
    @CsvSource({"90, 410, 0.18, 37.8", "45, 655, 0.0643, 13.5"})
    void findsTheLeakOfANight(double load, double unload, double share, double leak) {
        LoadShare found = LoadShare.of(Collections.nCopies(5, new LoadCycle(load, unload, 0)));

        assertThat(found.share()).isCloseTo(share, within(5e-5));
        assertThat(found.leak(cfm(210, 0.05)).flow().in(CFM)).isCloseTo(leak, within(0.05));
        assertThat(found.isEnough()).isTrue();
    }

    @Test
    void countsTimeOffWithTimeUnloaded() {
        LoadShare unloaded = LoadShare.of(List.of(NIGHT));
        LoadShare split = LoadShare.of(List.of(new LoadCycle(90, 110, 300)));

        assertThat(split).isEqualTo(unloaded);
        assertThat(LoadShare.of(List.of(new LoadCycle(90, 0, 410)))).isEqualTo(unloaded);
    }

    /** (90 + 300)/500, had the time off been lumped with the loaded time. */
    @Test
    void tellsWhatLumpingTimeOffWithLoadedTimeWouldGive() {
        LoadCycle sum = LoadCycle.sum(List.of(new LoadCycle(90, 110, 300), new LoadCycle(90, 110, 300)));

        assertThat(sum).isEqualTo(new LoadCycle(180, 220, 600));
        assertThat(sum.shareIfOffWereLoaded()).isCloseTo(0.78, within(1e-12));
        assertThat(LoadCycle.sum(List.of(NIGHT)).shareIfOffWereLoaded()).isEqualTo(0.18);
    }

    /** A long cycle weighs more than a short one: 30/300 and 30/100 together are 60/400, not the mean of 10 and 30 %. */
    @Test
    void sumsTimesBeforeItDivides() {
        LoadShare share = LoadShare.of(List.of(new LoadCycle(30, 270, 0), new LoadCycle(30, 70, 0)));

        assertThat(share.share()).isCloseTo(0.15, within(1e-12));
    }

    /**
     * By hand: T 80, 100, 90 of 500 each; f = 0.18, e = −10, 10, 0, u = √(200/(3 · 2))/500 = 1.1547 %; the hand adds
     * 0.1/500 · √((0.82² + 0.18²)/3) = 0.0097 %.
     */
    @Test
    void takesItsUncertaintyFromTheScatterOfCycles() {
        LoadShare share =
                LoadShare.of(List.of(new LoadCycle(80, 420, 0), new LoadCycle(100, 400, 0), new LoadCycle(90, 410, 0)));

        assertThat(share.u()).isCloseTo(Math.hypot(0.011547, 0.000097), within(5e-7));
        assertThat(share.isEnough()).isFalse();
    }

    /** 4000 nights of 8 cycles with 10 % scatter in each time, seed 7: the stated uncertainty is the deviation within 5 %. */
    @Test
    void statesTheScatterOfManyNights() {
        var random = new Random(7);
        double sum = 0;
        double squares = 0;
        double stated = 0;
        int nights = 4000;
        for (int night = 0; night < nights; night++) {
            LoadShare share = LoadShare.of(IntStream.range(0, 8)
                    .mapToObj(i -> new LoadCycle(
                            90 * (1 + 0.1 * random.nextGaussian()), 410 * (1 + 0.1 * random.nextGaussian()), 0))
                    .toList());
            sum += share.share();
            squares += share.share() * share.share();
            stated += share.u() * share.u();
        }
        double deviation = Math.sqrt(squares / nights - sum / nights * sum / nights);

        assertThat(Math.sqrt(stated / nights) / deviation).isCloseTo(1, within(0.05));
    }

    @Test
    void isUnsureOfOneCycle() {
        LoadShare one = LoadShare.of(List.of(NIGHT));

        assertThat(one.u() / one.share()).isCloseTo(0.2, within(1e-4));
        assertThat(LoadShare.of(Collections.nCopies(4, NIGHT)).u()).isLessThan(one.u());
    }

    /** √((0.2 · 0.18)² + (0.18 · 0.05)²) of 210 cfm, by hand: 7.79 cfm. */
    @Test
    void carriesBothUncertaintiesToTheLeak() {
        MeasuredFlow leak = LoadShare.of(List.of(NIGHT)).leak(cfm(210, 0.05));

        assertThat(leak.standardUncertainty().in(CFM)).isCloseTo(7.79, within(5e-3));
        assertThat(leak.basis()).isEqualTo(FlowBasis.INTAKE);
    }

    @ParameterizedTest
    @CsvSource({"0, WELL_KEPT", "0.099, WELL_KEPT", "0.1, BETWEEN", "0.199, BETWEEN", "0.2, NEGLECTED", "0.5, NEGLECTED"
    })
    void comparesWithOtherPlants(double share, LeakLevel level) {
        assertThat(LeakLevel.of(share)).isEqualTo(level);
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> LoadShare.of(List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LoadCycle(0, 10, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LoadCycle(10, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LoadCycle(10, -1, 5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LoadCycle(10, Double.NaN, 5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LoadCycle(10, Double.POSITIVE_INFINITY, 5))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
