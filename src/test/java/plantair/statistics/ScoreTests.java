package plantair.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScoreTests {

    /** GUM, H.3 by R 4.2.2: slope 0.00218269774 with 0.00066793877, 9 degrees of freedom, p 0.0097166. */
    @Test
    void agreesWithRsProbabilityOfTheThermometerSlope() {
        Score score = Score.of(0.00218269774, 0.00066793877, 9);

        assertThat(score.probability()).isCloseTo(0.0097166, within(5e-8));
    }

    /** Own nine tests, one more; 11 degrees of freedom, probabilities by a separate program. */
    @ParameterizedTest
    @CsvSource({"-0.8882, 0.39346, 3e-5", "-3.0923, 0.01024, 5e-6", "-4.3650, 0.00113, 5e-6"})
    void agreesWithTheNextOfNineTests(double score, double probability, double tolerance) {
        assertThat(Score.of(score, 1, 11).probability()).isCloseTo(probability, within(tolerance));
    }

    @Test
    void countsBothDirectionsAlike() {
        assertThat(Score.of(-3, 2, 7))
                .isEqualTo(new Score(-1.5, Score.of(3, 2, 7).probability()));
        assertThat(Score.of(0, 2, 7)).isEqualTo(new Score(0, 1));
    }

    @Test
    void refusesBadNumbers() {
        assertThatIllegalArgumentException().isThrownBy(() -> Score.of(1, 0, 7));
        assertThatIllegalArgumentException().isThrownBy(() -> Score.of(Double.NaN, 1, 7));
        assertThatIllegalArgumentException().isThrownBy(() -> Score.of(1, 1, 0));
    }
}
