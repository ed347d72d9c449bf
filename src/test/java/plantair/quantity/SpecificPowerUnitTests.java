package plantair.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plantair.pumpup.SpecificPower;

class SpecificPowerUnitTests {

    /** 100 cfm are 4.719474E-02 m³/s (NIST SP 811, from memory), so 19 kW for them are 19/2.831685 for 1 m³/min. */
    @Test
    void convertsWhatWasTyped() {
        var typed = SpecificPower.of(new Entered("19", SpecificPowerUnit.KW_PER_100_CFM));

        assertThat(typed.joulesPerCubicMetre()).isCloseTo(19_000 / 4.719474E-02, within(0.1));
        assertThat(typed.in(SpecificPowerUnit.KW_PER_CUBIC_METRE_PER_MINUTE)).isCloseTo(19 / 2.831685, within(1e-5));
        assertThat(typed.in(SpecificPowerUnit.KW_PER_100_CFM)).isCloseTo(19, within(1e-12));
    }

    @Test
    void refusesAnotherQuantity() {
        assertThatThrownBy(() -> SpecificPower.of(new Entered("19", PowerUnit.KW)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
