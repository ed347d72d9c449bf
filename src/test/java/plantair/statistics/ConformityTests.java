package plantair.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConformityTests {

    /** JCGM 106:2012, 7.3.3, from memory: lower limit 490, estimate 509.7, u 8.6: 0.99; unrounded 0.989010 by SciPy. */
    @Test
    void givesTheProbabilityAboveALowerLimit() {
        double above = Conformity.probabilityAbove(509.7, 8.6, 490);

        assertThat(above).as("printed").isCloseTo(0.99, within(5e-3));
        assertThat(above).isCloseTo(0.9890095473848222, within(1e-12));
    }

    /** JCGM 106:2012, 7.3.3, from memory: upper limit −5.40, estimate −5.47, u 0.05: 0.92; unrounded 0.919243 by SciPy. */
    @Test
    void givesTheProbabilityBelowAnUpperLimitAsTheRest() {
        double below = 1 - Conformity.probabilityAbove(-5.47, 0.05, -5.40);

        assertThat(below).as("printed").isCloseTo(0.92, within(5e-3));
        assertThat(below).isCloseTo(0.9192433407662289, within(1e-12));
    }

    /** Student's distribution by SciPy, stats.t.cdf: own, no published case. */
    @ParameterizedTest
    @CsvSource({
        "509.7, 8.6, 490, 5, 0.964706102422972",
        "1.4, 1, 0, 4.5, 0.8867286283708292",
        "1.4, 1, 0, 1e9, 0.9192433406111112"
    })
    void isLessSureWhenTheUncertaintyIsItselfUncertain(
            double estimate, double u, double limit, double degrees, double expected) {
        assertThat(Conformity.probabilityAbove(estimate, u, limit, degrees)).isCloseTo(expected, within(1e-9));
    }

    /** Own: Student's distribution nears the normal one without a step, on both sides of where the program changes over. */
    @ParameterizedTest
    @CsvSource({"1e4, 1e-4", "1e6, 1e-6", "9.9e7, 1e-8", "1e8, 1e-8", "1e12, 1e-8"})
    void nearsTheNormalDistributionWithManyDegrees(double degrees, double tolerance) {
        double normal = Conformity.probabilityAbove(1.4, 1, 0);

        assertThat(Conformity.probabilityAbove(1.4, 1, 0, degrees)).isCloseTo(normal, within(tolerance));
    }

    @Test
    void isUndecidedAtTheLimitAndSureFarFromIt() {
        assertThat(Conformity.probabilityAbove(7, 1, 7)).isEqualTo(0.5);
        assertThat(Conformity.probabilityAbove(7, 1, 7, 3)).isEqualTo(0.5);
        assertThat(Conformity.probabilityAbove(7, 1e-300, 6)).isEqualTo(1);
        assertThat(Conformity.probabilityAbove(6, 1e-300, 7, 3)).isZero();
    }

    /** Own: the guard band of 1.6449 u. */
    @Test
    void findsTheUncertaintyThatWouldSettleIt() {
        assertThat(Conformity.settlingUncertainty(509.7, 490)).isCloseTo(19.7 / 1.6448536269514722, within(1e-9));
        assertThat(Conformity.settlingUncertainty(490, 509.7)).isCloseTo(19.7 / 1.6448536269514722, within(1e-9));
        assertThat(Conformity.settlingUncertainty(509.7, 490, 5)).isCloseTo(19.7 / 2.0150483733330233, within(1e-8));
        assertThat(Conformity.settlingUncertainty(490, 490)).isZero();
    }

    @ParameterizedTest
    @CsvSource({"509.7, 490, Infinity", "490, 509.7, Infinity", "509.7, 490, 4.5", "490, 509.7, 4.5"})
    void reachesJustThatProbabilityWithThatUncertainty(double estimate, double limit, double degrees) {
        double u = Conformity.settlingUncertainty(estimate, limit, degrees);

        double expected = estimate > limit ? 0.95 : 0.05;
        assertThat(Conformity.probabilityAbove(estimate, u, limit, degrees)).isCloseTo(expected, within(1e-8));
        assertThat(Math.abs(Conformity.probabilityAbove(estimate, u * 1.01, limit, degrees) - 0.5))
                .isLessThan(0.45);
    }

    @Test
    void refusesWhatIsNoUncertaintyOrNoNumber() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Conformity.probabilityAbove(1, 0, 1))
                .withMessageContaining("u must be positive");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Conformity.probabilityAbove(Double.NaN, 1, 1))
                .withMessageContaining("estimate");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Conformity.probabilityAbove(1, 1, Double.POSITIVE_INFINITY))
                .withMessageContaining("limit");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Conformity.probabilityAbove(1, 1, 1, 0))
                .withMessageContaining("degreesOfFreedom");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Conformity.settlingUncertainty(1, 1, Double.NaN))
                .withMessageContaining("degreesOfFreedom");
    }
}
