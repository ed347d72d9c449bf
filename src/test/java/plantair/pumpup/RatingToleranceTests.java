package plantair.pumpup;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plantair.quantity.FlowRate;

/** ISO 1217:2009 annex C, as trade data sheets print it (from memory). */
class RatingToleranceTests {

    @ParameterizedTest
    @CsvSource({
        "0.1, 0.07",
        "0.499, 0.07",
        "0.501, 0.06",
        "1.499, 0.06",
        "1.501, 0.05",
        "14.99, 0.05",
        "15.01, 0.04",
        "90, 0.04"
    })
    void isTighterForALargerMachine(double cubicMetresAMinute, double tolerance) {
        assertThat(RatingTolerance.of(new FlowRate(cubicMetresAMinute / 60))).isEqualTo(tolerance);
    }
}
