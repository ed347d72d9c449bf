package plantair.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RunDriftTests {

    /** By hand: 102, 100, 98 has slope −2; u of one run is 1, u of the slope 1/√2; score −2√2. */
    @Test
    void scoresFallingRunsBelowZero() {
        assertThat(RunDrift.score(new double[] {102, 100, 98}, 0.01)).isCloseTo(-2 * Math.sqrt(2), within(1e-12));
    }

    @Test
    void doesNotHangOnTheUnit() {
        double inCfm = RunDrift.score(new double[] {20, 21, 23}, 0.02);

        double inTenths = RunDrift.score(new double[] {200, 210, 230}, 0.02);

        assertThat(inTenths).isCloseTo(inCfm, within(1e-12)).isPositive();
    }

    @Test
    void isZeroForRunsThatGoUpAndDown() {
        assertThat(RunDrift.score(new double[] {20, 25, 20}, 0.01)).isZero();
    }

    @Test
    void refusesOneRunNoUncertaintyAndAMeanOfZero() {
        assertThatIllegalArgumentException().isThrownBy(() -> RunDrift.score(new double[] {20}, 0.01));
        assertThatIllegalArgumentException().isThrownBy(() -> RunDrift.score(new double[] {20, 21}, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> RunDrift.score(new double[] {20, 21}, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> RunDrift.score(new double[] {0, 0}, 0.01));
    }
}
