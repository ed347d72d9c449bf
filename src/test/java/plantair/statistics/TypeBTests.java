package plantair.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** JCGM 100:2008, 4.3.7, 4.3.9 and 4.3.3, from memory; the figures by hand. */
class TypeBTests {

    @Test
    void dividesLimitsByWhatIsKnownBetweenThem() {
        assertThat(TypeB.rectangular(1)).isCloseTo(0.57735026919, within(5e-12));
        assertThat(TypeB.triangular(1)).isCloseTo(0.40824829046, within(5e-12));
        assertThat(TypeB.normal(1, 2)).isEqualTo(0.5);
    }

    @Test
    void takesNoLimitsAsNoUncertainty() {
        assertThat(TypeB.rectangular(0)).isZero();
        assertThat(TypeB.triangular(0)).isZero();
        assertThat(TypeB.normal(0, 2)).isZero();
    }

    @Test
    void refusesWhatIsNoHalfWidth() {
        assertThatIllegalArgumentException().isThrownBy(() -> TypeB.rectangular(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> TypeB.triangular(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> TypeB.normal(Double.POSITIVE_INFINITY, 2));
        assertThatIllegalArgumentException().isThrownBy(() -> TypeB.normal(1, 0));
    }
}
