package plantair.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static plantair.quantity.FlowUnit.CFM;
import static plantair.quantity.PowerUnit.KW;
import static plantair.quantity.SpecificPowerUnit.KW_PER_100_CFM;

import java.util.List;
import org.junit.jupiter.api.Test;
import plantair.quantity.FlowRate;
import plantair.quantity.Power;

/** Power for the air of several machines; invented, worked by hand. */
class SiteSpecificPowerTests {

    private static PoweredPart machine(double cfm, double kilowatts, double random, double gauge) {
        return new PoweredPart(
                new CapacityPart("C", FlowRate.of(cfm, CFM), random, List.of(new SharedPart("gauge 1", gauge))),
                Power.of(kilowatts, KW));
    }

    /** 18 kW for 100 cfm and 44 for 200: 62 for 300, 20.67 a 100 and not the mean of 18 and 22. */
    @Test
    void letsALargeMachineWeighMore() {
        var together = SiteSpecificPower.of(List.of(machine(100, 18, 0, 0), machine(200, 44, 0, 0)));

        assertThat(together.value().in(KW_PER_100_CFM)).isCloseTo(62 / 3.0, within(1e-9));
        assertThat(together.relativeU()).isZero();
    }

    /** One gauge tested both: 3 % of each are 3 % of the sum; 4 % of each alone are √(16 + 64)/300 of it. */
    @Test
    void isAsUnsureAsTheSumOfTheFlows() {
        var shared = SiteSpecificPower.of(List.of(machine(100, 18, 0, 0.03), machine(200, 44, 0, 0.03)));
        var alone = SiteSpecificPower.of(List.of(machine(100, 18, 0.04, 0), machine(200, 44, 0.04, 0)));

        assertThat(shared.relativeU()).isCloseTo(0.03, within(1e-12));
        assertThat(alone.relativeU()).isCloseTo(Math.sqrt(80) / 300, within(1e-12));
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> SiteSpecificPower.of(List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> machine(0, 18, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> machine(100, 0, 0, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
