package plantair.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PooledScatterTests {

    @Test
    void keepsTheStatedUncertaintyWhenThereIsNoScatterToLookAt() {
        PooledScatter pooled = PooledScatter.of(0, 0, 4);

        assertThat(pooled).isEqualTo(new PooledScatter(1, 4, false));
    }

    /** χ² table, upper 5 % point for 7 degrees of freedom: 14.067 (any table, from memory). */
    @Test
    void believesTheScatterBeyondTheFivePercentPoint() {
        PooledScatter below = PooledScatter.of(14.06, 7, 4);
        PooledScatter beyond = PooledScatter.of(14.08, 7, 4);

        assertThat(below.guardFired()).isFalse();
        assertThat(below.s()).isCloseTo(Math.sqrt((4 + 14.06) / 11), within(1e-15));
        assertThat(below.degreesOfFreedom()).isEqualTo(11);
        assertThat(beyond).isEqualTo(new PooledScatter(Math.sqrt(14.08 / 7), 7, true));
    }

    /** Student's table (any, from memory; 11 degrees of freedom 2.200985 by R). */
    @ParameterizedTest
    @CsvSource({"1, 0.95, 12.7062, 5e-5", "2, 0.95, 4.30265, 5e-6", "11, 0.95, 2.200985, 5e-7", "8, 0.99, 3.35539, 5e-6"
    })
    void coversAsStudentsTableSays(double nu, double confidence, double expected, double tolerance) {
        assertThat(new PooledScatter(1, nu, false).coverageFactor(confidence)).isCloseTo(expected, within(tolerance));
    }

    /** Exact factors of the non-central distribution for a power of 80 %, by scipy 1.17; ours is an approximation. */
    @ParameterizedTest
    @CsvSource({"3, 4.2559, 0.023", "5, 3.5139, 0.007", "8, 3.2009, 0.002", "20, 2.9455, 0.0005", "50, 2.8569, 0.0005"})
    void tellsWhichSlopeWouldHaveBeenSeenFourTimesInFive(double nu, double exact, double relative) {
        double factor = new PooledScatter(1, nu, false).detectionFactor(0.95);

        assertThat(factor / exact).isCloseTo(1, within(relative));
    }

    @Test
    void asksForMoreWhereMoreConfidenceIsAsked() {
        PooledScatter endless = new PooledScatter(1, 1e9, false);

        assertThat(endless.detectionFactor(0.95)).isCloseTo(2.802, within(5e-4));
        assertThat(endless.detectionFactor(0.99)).isCloseTo(3.417, within(5e-4));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.5, Double.NaN})
    void refusesConfidenceOutsideItsRange(double confidence) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PooledScatter(1, 4, false).coverageFactor(confidence));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesDegreesOfFreedomThatAreNotPositive(double nu0) {
        assertThatIllegalArgumentException().isThrownBy(() -> PooledScatter.of(1, 7, nu0));
    }
}
