package plantair.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plantair.statistics.LineCrossing.Kind;

class LineCrossingTests {

    /** Falls by 1 a year from 10 at x = 2, each known to 0.1. */
    private static final LineFit FALLING = new LineFit(2, 10, -1, 0.1, 0.1, 1, 5);

    /** Both ends are where the distance of line and limit is k standard uncertainties. */
    @Test
    void endsWhereTheLineIsJustRefused() {
        LineCrossing crossing = LineCrossing.of(FALLING, 2, 0.3, 6);

        assertThat(crossing.kind()).isEqualTo(Kind.BOUNDED);
        assertThat(crossing.best()).isCloseTo(6, within(1e-12));
        for (double end : new double[] {crossing.earliest(), crossing.latest()}) {
            double u = Math.hypot(FALLING.uncertaintyAt(end), 0.3);
            assertThat(Math.abs(FALLING.valueAt(end) - 6) / u).isCloseTo(2, within(1e-10));
        }
        assertThat(crossing.earliest()).isLessThan(crossing.best());
        assertThat(crossing.latest()).isGreaterThan(crossing.best());
    }

    @Test
    void hasNoLatestWhenTheSlopeMayBeZero() {
        LineCrossing crossing = LineCrossing.of(FALLING, 12, 0, 6);

        double earliest = crossing.earliest();
        assertThat(crossing.kind()).isEqualTo(Kind.NOT_BEFORE);
        assertThat(crossing.latest()).isNaN();
        assertThat(crossing.best()).isNaN();
        assertThat(earliest).isGreaterThan(2);
        assertThat((FALLING.valueAt(earliest) - 6) / FALLING.uncertaintyAt(earliest))
                .isCloseTo(12, within(1e-9));
    }

    /** Also a line that rises, but may fall, can reach the limit. */
    @Test
    void hasAnEarliestForALineThatRisesButMayFall() {
        LineCrossing crossing = LineCrossing.of(new LineFit(2, 10, 0.05, 0.1, 0.1, 1, 5), 2, 0, 6);

        assertThat(crossing.kind()).isEqualTo(Kind.NOT_BEFORE);
        assertThat(crossing.earliest()).isGreaterThan(20);
    }

    /** b = −k u exactly: A = 0, and the formula with A below the bar would be no number. */
    @Test
    void holdsWhereTheSlopeIsJustAtItsInterval() {
        LineCrossing crossing = LineCrossing.of(new LineFit(0, 10, -1, 0.25, 0.5, 1, 5), 2, 0, 6);

        assertThat(crossing.kind()).isEqualTo(Kind.NOT_BEFORE);
        assertThat(crossing.earliest()).isCloseTo((16 - 0.25) / 8, within(1e-12));
    }

    @Test
    void isNotComingWhenTheLineSurelyRises() {
        assertThat(LineCrossing.of(new LineFit(2, 10, 1, 0.1, 0.1, 1, 5), 2, 0, 6)
                        .kind())
                .isEqualTo(Kind.NOT_COMING);
    }

    @Test
    void isUnknownWhenTheLineMayBeOnEitherSideAndItsSlopeDoesNotTell() {
        assertThat(LineCrossing.of(FALLING, 12, 0, 9.5).kind()).isEqualTo(Kind.UNKNOWN);
        assertThat(LineCrossing.of(FALLING, 12, 0, 10.5).kind()).isEqualTo(Kind.UNKNOWN);
    }

    @Test
    void refusesBadNumbers() {
        assertThatIllegalArgumentException().isThrownBy(() -> LineCrossing.of(FALLING, 0, 0, 6));
        assertThatIllegalArgumentException().isThrownBy(() -> LineCrossing.of(FALLING, 2, -1, 6));
        assertThatIllegalArgumentException().isThrownBy(() -> LineCrossing.of(FALLING, 2, 0, Double.NaN));
    }
}
