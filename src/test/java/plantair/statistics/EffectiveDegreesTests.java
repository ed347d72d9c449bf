package plantair.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EffectiveDegreesTests {

    private static final double ENDLESS = Double.POSITIVE_INFINITY;

    /** By hand: equal parts with n and m degrees have 4 n m/(n + m). */
    @Test
    void addsTheDegreesOfEqualParts() {
        EffectiveDegrees degrees = EffectiveDegrees.of(new double[] {3, -3}, new double[] {2, 6});

        assertThat(degrees.unrounded()).isCloseTo(6, within(1e-14));
    }

    /** By hand: three equal parts with n degrees each have 3 n, of which doubles leave a last digit less. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 2, 3, 5, 7, 10, 33})
    void doesNotLoseADegreeToTheLastDigit(double nu) {
        EffectiveDegrees degrees = EffectiveDegrees.of(new double[] {1, 1, 1}, new double[] {nu, nu, nu});

        assertThat(degrees.truncated()).isEqualTo(3 * nu);
    }

    @Test
    void keepsTheDegreesOfASinglePart() {
        EffectiveDegrees degrees = EffectiveDegrees.of(new double[] {0.3, 0}, new double[] {9, 3});

        assertThat(degrees.truncated()).isEqualTo(9);
    }

    @Test
    void hasEndlessDegreesWhenEveryPartIsKnownExactly() {
        EffectiveDegrees degrees = EffectiveDegrees.of(new double[] {3, 4}, new double[] {ENDLESS, ENDLESS});

        assertThat(degrees).isEqualTo(new EffectiveDegrees(ENDLESS));
        assertThat(degrees.truncated()).isInfinite();
    }

    /** JCGM 100:2008, table G.2, from memory. */
    @ParameterizedTest
    @CsvSource({
        "1, 0.95, 12.71, 0.005",
        "2, 0.95, 4.30, 0.005",
        "10, 0.95, 2.23, 0.005",
        "10.9, 0.95, 2.23, 0.005",
        "16, 0.99, 2.92, 0.005",
        "100, 0.95, 1.984, 0.0005",
        "Infinity, 0.95, 1.960, 0.0005",
        "Infinity, 0.99, 2.576, 0.0005"
    })
    void givesTheFactorOfTheTableForTruncatedDegrees(double degrees, double confidence, double k, double tolerance) {
        assertThat(new EffectiveDegrees(degrees).coverageFactor(confidence)).isCloseTo(k, within(tolerance));
    }

    @Test
    void refusesWhatHasNoDegrees() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> EffectiveDegrees.of(new double[] {1}, new double[] {0.5}))
                .withMessageContaining("degrees[0]");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> EffectiveDegrees.of(new double[] {1}, new double[] {Double.NaN}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> EffectiveDegrees.of(new double[] {1, 2}, new double[] {1}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> EffectiveDegrees.of(new double[] {0, 0}, new double[] {1, 1}));
        assertThatIllegalArgumentException().isThrownBy(() -> EffectiveDegrees.of(new double[0], new double[0]));
        assertThatIllegalArgumentException().isThrownBy(() -> new EffectiveDegrees(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> new EffectiveDegrees(5).coverageFactor(1));
    }
}
