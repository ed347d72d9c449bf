package plantair.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class MeasuredFlowTests {

    @Test
    void takesItsUncertaintyFromAPartOfTheFlow() {
        var flow = MeasuredFlow.of(new FlowRate(0.2), 0.05, FlowBasis.INTAKE);
        var below = MeasuredFlow.of(new FlowRate(-0.2), 0.05, FlowBasis.INTAKE);

        assertThat(flow.standardUncertainty().cubicMetresPerSecond()).isCloseTo(0.01, within(1e-15));
        assertThat(below.standardUncertainty()).isEqualTo(flow.standardUncertainty());
        assertThat(MeasuredFlow.of(new FlowRate(0), 0.05, FlowBasis.INTAKE)
                        .standardUncertainty()
                        .cubicMetresPerSecond())
                .isZero();
    }

    @Test
    void refusesAnUncertaintyBelowZero() {
        assertThatThrownBy(() -> MeasuredFlow.of(new FlowRate(0.2), -0.05, FlowBasis.INTAKE))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
