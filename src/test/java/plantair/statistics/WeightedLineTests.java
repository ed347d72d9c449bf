package plantair.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WeightedLineTests {

    private static final double[] X = {0, 1, 3};
    private static final double[] Y = {5, 7, 11};
    private static final double[] U = {1, 2, 0.5};

    @Test
    void goesThroughPointsOnOneLine() {
        LineFit fit = WeightedLine.fit(X, Y, U);

        assertThat(fit.slope()).isCloseTo(2, within(1e-14));
        assertThat(fit.valueAt(10)).isCloseTo(25, within(1e-13));
        assertThat(fit.chiSquare()).isCloseTo(0, within(1e-25));
    }

    /** By hand: weights 1, 1 at x 0 and 2: level 1, slope 1, uLevel 1/√2, uSlope 1/√2. */
    @Test
    void joinsTwoPointsAndKeepsTheirUncertainty() {
        LineFit fit = WeightedLine.fit(new double[] {0, 2}, new double[] {0, 2}, new double[] {1, 1});

        assertThat(fit).isEqualTo(new LineFit(1, 1, 1, 1 / Math.sqrt(2), 1 / Math.sqrt(2), 0, 0));
        assertThat(fit.uncertaintyAt(0)).isCloseTo(1, within(1e-15));
        assertThatIllegalStateException().isThrownBy(fit::birgeRatio);
    }

    @Test
    void doesNotHangOnWhereXStarts() {
        double[] late = {1e9, 1e9 + 1, 1e9 + 3};

        LineFit fit = WeightedLine.fit(late, new double[] {5, 7.5, 11}, U);

        LineFit early = WeightedLine.fit(X, new double[] {5, 7.5, 11}, U);
        assertThat(fit.slope()).isCloseTo(early.slope(), within(1e-6));
        assertThat(fit.uSlope()).isCloseTo(early.uSlope(), within(1e-6));
    }

    @Test
    void keepsSlopeWhenACommonFactorIsAddedToTheLevel() {
        double[] raised = {5.05, 7.55, 11.05};

        LineFit fit = WeightedLine.fit(X, raised, U);

        LineFit before = WeightedLine.fit(X, new double[] {5, 7.5, 11}, U);
        assertThat(fit.slope()).isCloseTo(before.slope(), within(1e-14));
        assertThat(fit.chiSquare()).isCloseTo(before.chiSquare(), within(1e-13));
    }

    @Test
    void refusesFewerThanTwoPoints() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WeightedLine.fit(new double[] {1}, new double[] {1}, new double[] {1}));
    }

    @Test
    void refusesArraysOfDifferentLength() {
        assertThatIllegalArgumentException().isThrownBy(() -> WeightedLine.fit(X, Y, new double[] {1, 1}));
        assertThatIllegalArgumentException().isThrownBy(() -> WeightedLine.fit(X, new double[] {1, 1}, U));
    }

    /** The weighted mean of three times 0.1 is not 0.1, so that a sum of squares would not be zero. */
    @Test
    void refusesEqualXWhoseMeanIsRounded() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WeightedLine.fit(new double[] {0.1, 0.1, 0.1}, Y, new double[] {0.3, 0.7, 0.9}))
                .withMessageContaining("equal");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY, 1e-200, 1e200})
    void refusesUncertaintyThatGivesNoWeight(double u) {
        assertThatIllegalArgumentException().isThrownBy(() -> WeightedLine.fit(X, Y, new double[] {u, u, u}));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.NEGATIVE_INFINITY, 1e300})
    void refusesNumbersThatAreNotFiniteOrTooLarge(double number) {
        assertThatIllegalArgumentException().isThrownBy(() -> WeightedLine.fit(new double[] {0, 1, number}, Y, U));
        assertThatIllegalArgumentException().isThrownBy(() -> WeightedLine.fit(X, new double[] {0, 1, number}, U));
    }
}
