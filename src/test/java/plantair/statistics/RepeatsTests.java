package plantair.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

class RepeatsTests {

    @Test
    void agreesWithNistMichelso() {
        double[] speeds = ReferenceTable.read("nist_strd_michelso.csv").column("y");

        Repeats repeats = Repeats.of(speeds);

        assertThat(repeats.count()).isEqualTo(100);
        assertThat(repeats.mean()).isCloseTo(299.8524, withinPercentage(1e-12));
        assertThat(repeats.standardDeviation()).isCloseTo(0.0790105478190518, withinPercentage(1e-9));
    }

    /** By hand: 20, 21, 22: mean 21, deviation 1, spread 2/21. */
    @Test
    void givesMeanDeviationAndSpread() {
        Repeats repeats = Repeats.of(new double[] {21, 20, 22});

        assertThat(repeats.mean()).isEqualTo(21);
        assertThat(repeats.standardDeviation()).isEqualTo(1);
        assertThat(repeats.relativeSpread()).isCloseTo(2.0 / 21, within(1e-16));
    }

    @Test
    void hasNoScatterFromOneRun() {
        assertThat(Repeats.of(new double[] {21.13})).isEqualTo(new Repeats(1, 21.13, 0, 0));
    }

    @Test
    void refusesNothingAndNumbersThatAreNotFinite() {
        assertThatIllegalArgumentException().isThrownBy(() -> Repeats.of(new double[0]));
        assertThatIllegalArgumentException().isThrownBy(() -> Repeats.of(new double[] {1, Double.NaN}));
        assertThatIllegalArgumentException().isThrownBy(() -> Repeats.of(new double[] {1, -1}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Repeats.of(new double[] {Double.MAX_VALUE, Double.MAX_VALUE}));
    }
}
