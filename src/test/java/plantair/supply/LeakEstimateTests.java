package plantair.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plantair.quantity.FlowUnit.CFM;
import static plantair.quantity.LengthUnit.INCH;
import static plantair.quantity.PressureUnit.PSI;

import java.util.List;
import org.junit.jupiter.api.Test;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.FlowRate;
import plantair.quantity.GaugePressure;
import plantair.quantity.Length;
import plantair.quantity.MeasuredFlow;

/** Sizes of found leaks. */
class LeakEstimateTests {

    private static final AbsolutePressure STATION = AbsolutePressure.of(14.7, PSI);

    /** US Department of Energy (from memory): 1/8 in at 100 psig 26 cfm, of a rounded hole; a sharp one 0.61/0.97 of it. */
    @Test
    void agreesWithALeakTableForASharpHole() {
        FlowRate flow = LeakEstimate.ofHole(Length.of(0.125, INCH), GaugePressure.of(100, PSI), STATION);

        assertThat(flow.in(CFM) * 0.97 / 0.61).isCloseTo(26, within(0.4));
        assertThatThrownBy(() -> LeakEstimate.ofHole(Length.of(0.125, INCH), GaugePressure.of(10, PSI), STATION))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** By hand: judged 4 and 6 are wrong alike by 7 cfm, a metered 4 by 0.2: 14 ± 7.003. */
    @Test
    void addsWhatWasSizedInOneWayStraight() {
        MeasuredFlow sum =
                LeakEstimate.sum(List.of(leak(4, SizedBy.JUDGED), leak(6, SizedBy.JUDGED), leak(4, SizedBy.METER)));

        assertThat(sum.flow().in(CFM)).isCloseTo(14, within(1e-9));
        assertThat(sum.standardUncertainty().in(CFM)).isCloseTo(7.0029, within(5e-5));
        assertThat(LeakEstimate.sum(List.of()).flow().in(CFM)).isZero();
    }

    private static LeakEstimate leak(double cfm, SizedBy by) {
        return new LeakEstimate("", FlowRate.of(cfm, CFM), by);
    }
}
