package plantair.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plantair.quantity.FlowUnit.CUBIC_METRE_PER_MINUTE;
import static plantair.quantity.PowerUnit.KW;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plantair.pumpup.SpecificPower;
import plantair.quantity.FlowRate;
import plantair.quantity.Power;

/** When offers differ. Tolerances: ISO 1217:2009 annex C, from memory. */
class OfferDifferenceTests {

    private static Offer.AtSite offer(double cubicMetresPerMinute, double kilowatts) {
        var flow = FlowRate.of(cubicMetresPerMinute, CUBIC_METRE_PER_MINUTE);
        var power = Power.of(kilowatts, KW);
        return new Offer.AtSite(flow, flow, power, SpecificPower.of(power, flow), 1);
    }

    @ParameterizedTest
    @CsvSource({
        "0.4, 0.07, 0.08",
        "0.5, 0.06, 0.07",
        "1.4, 0.06, 0.07",
        "1.5, 0.05, 0.06",
        "14.9, 0.05, 0.06",
        "15, 0.04, 0.05"
    })
    void hasTheTolerancesOfTheStandard(double flow, double flowTolerance, double powerTolerance) {
        var difference = OfferDifference.between(offer(flow, 10), offer(flow, 10));

        assertThat(difference.flowTolerance()).isEqualTo(flowTolerance);
        assertThat(difference.powerTolerance()).isEqualTo(powerTolerance);
        assertThat(difference.isFlowTold()).isFalse();
        assertThat(difference.isPowerTold()).isFalse();
    }

    /** 10.4 and 10.6 beside 10 m³/min, tolerance 5 %. */
    @Test
    void callsADifferenceOfFlowsNoneWithinTheTolerance() {
        assertThat(OfferDifference.between(offer(10.4, 50), offer(10, 50)).isFlowTold())
                .isFalse();
        assertThat(OfferDifference.between(offer(10.6, 50), offer(10, 50)).isFlowTold())
                .isTrue();
        assertThat(OfferDifference.between(offer(9.4, 50), offer(10, 50)).flow())
                .isCloseTo(-0.06, within(1e-12));
    }

    /** 53.5 and 52.9 kW beside 50 for the same air are 7 and 5.8 %; tolerance 6 %. */
    @Test
    void callsADifferenceOfPowersNoneWithinTheTolerance() {
        assertThat(OfferDifference.between(offer(10, 53.5), offer(10, 50)).isPowerTold())
                .isTrue();
        assertThat(OfferDifference.between(offer(10, 52.9), offer(10, 50)).isPowerTold())
                .isFalse();
    }

    /** A small machine beside a large one: the larger tolerance of the two. */
    @Test
    void takesTheLargerOfTwoTolerances() {
        var difference = OfferDifference.between(offer(0.4, 2), offer(20, 100));

        assertThat(difference.flowTolerance()).isEqualTo(0.07);
        assertThat(difference.powerTolerance()).isEqualTo(0.08);
    }
}
