package plantair.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LinearPropagationTests {

    private static final double[][] ALIKE = {{1, 1}, {1, 1}};
    private static final double[][] DIFFERENCE_AND_SUM = {{1, -1}, {1, 1}};

    @Test
    void combinesIndependentContributions() {
        assertThat(LinearPropagation.combined(3, -4)).isEqualTo(5);
        assertThat(LinearPropagation.combined()).isZero();
    }

    /** By hand: a common error leaves a difference and doubles in a sum. */
    @Test
    void letsACommonErrorCancelInADifference() {
        Covariance results = LinearPropagation.of(DIFFERENCE_AND_SUM, new double[] {0.1, 0.1}, ALIKE);

        assertThat(results.standardUncertainty(0)).isZero();
        assertThat(results.standardUncertainty(1)).isCloseTo(0.2, within(1e-16));
        assertThatIllegalStateException().isThrownBy(() -> results.correlation(0, 1));
    }

    /** By hand: cov(a − b, a + b) = u(a)² − u(b)². */
    @Test
    void correlatesResultsThatShareInputs() {
        Covariance results = LinearPropagation.of(DIFFERENCE_AND_SUM, new double[] {4, 3});

        assertThat(results.between(0, 1)).isEqualTo(7);
        assertThat(results.between(1, 0)).isEqualTo(7);
        assertThat(results.correlation(0, 1)).isCloseTo(7.0 / 25, within(1e-16));
        assertThat(results.correlation(0, 0)).isCloseTo(1, within(1e-15));
    }

    /** By hand: u² = 3² + 4² + 2 · 0.5 · 3 · 4. */
    @Test
    void addsTheCovarianceOfInputs() {
        double[][] correlations = {{1, 0.5}, {0.5, 1}};

        Covariance sum = LinearPropagation.of(new double[][] {{1, 1}}, new double[] {3, 4}, correlations);

        assertThat(sum.between(0, 0)).isEqualTo(37);
    }

    /** Own: full correlation of unequal thirds cancels but for the last digit, which must not become a square root of −1e-18. */
    @Test
    void takesARestBelowZeroFromRoundingAsNone() {
        double[][] correlations = {{1, 1, 1}, {1, 1, 1}, {1, 1, 1}};
        for (double u = 0.01; u < 1; u += 0.013) {
            double[][] row = {{0.1, 0.2, -0.3}};

            Covariance result = LinearPropagation.of(row, new double[] {u, u, u}, correlations);

            assertThat(result.standardUncertainty(0)).isBetween(0.0, 1e-8);
        }
    }

    @Test
    void refusesCorrelationsThatContradictEachOther() {
        double[][] opposed = {{1, -0.9, -0.9}, {-0.9, 1, -0.9}, {-0.9, -0.9, 1}};

        assertThatIllegalArgumentException()
                .isThrownBy(() -> LinearPropagation.of(new double[][] {{1, 1, 1}}, new double[] {1, 1, 1}, opposed))
                .withMessageContaining("contradict");
    }

    @Test
    void refusesWhatIsNoCorrelation() {
        refusesCorrelations(new double[][] {{1, 1.1}, {1.1, 1}});
        refusesCorrelations(new double[][] {{1, 0.2}, {0.3, 1}});
        refusesCorrelations(new double[][] {{0.9, 0}, {0, 1}});
        refusesCorrelations(new double[][] {{1, Double.NaN}, {Double.NaN, 1}});
        refusesCorrelations(new double[][] {{1, 0}});
        refusesCorrelations(new double[][] {{1, 0}, {0}});
    }

    private static void refusesCorrelations(double[][] correlations) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LinearPropagation.of(DIFFERENCE_AND_SUM, new double[] {1, 1}, correlations))
                .withMessageContaining("correlation");
    }

    @Test
    void refusesWhatDoesNotFitOrIsNoNumber() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LinearPropagation.of(DIFFERENCE_AND_SUM, new double[] {1, 1, 1}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LinearPropagation.of(DIFFERENCE_AND_SUM, new double[] {1, -1}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LinearPropagation.of(new double[][] {{Double.NaN, 1}}, new double[] {1, 1}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LinearPropagation.of(DIFFERENCE_AND_SUM, new double[] {1e200, 1}));
        assertThatIllegalArgumentException().isThrownBy(() -> LinearPropagation.combined(1, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> LinearPropagation.combined(1e200));
    }
}
