package plantair.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;

class BaselineTests {

    /** By hand: 93 of 100; √(3² + 4²) = 5. */
    @Test
    void comparesWithRootSumOfSquares() {
        OutputPoint baseline = new OutputPoint(LocalDate.of(2020, 1, 1), cfm(100), 0.03);
        OutputPoint test = new OutputPoint(LocalDate.of(2024, 1, 1), cfm(93), 0.04);

        BaselineComparison comparison = Baseline.compare(test, baseline);

        assertThat(comparison.ratio()).isCloseTo(0.93, within(1e-15));
        assertThat(comparison.relativeU()).isCloseTo(0.05, within(1e-15));
        assertThat(comparison.standardUncertainty()).isCloseTo(0.0465, within(1e-15));
    }

    @Test
    void doesNotHangOnTheUnit() {
        double ratio = Baseline.ratio(
                FlowRate.of(50, FlowUnit.LITRE_PER_SECOND), FlowRate.of(6, FlowUnit.CUBIC_METRE_PER_MINUTE));

        assertThat(ratio).isCloseTo(0.5, within(1e-15));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.MIN_VALUE})
    void refusesABaselineThatIsNotAboveZero(double m3s) {
        assertThatIllegalArgumentException().isThrownBy(() -> Baseline.ratio(cfm(20), new FlowRate(m3s)));
    }

    private static FlowRate cfm(double value) {
        return FlowRate.of(value, FlowUnit.CFM);
    }
}
