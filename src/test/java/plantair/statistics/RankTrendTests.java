package plantair.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RankTrendTests {

    private static final double[] FIVE = {0, 1, 2, 3, 4};

    /** By hand: all ten pairs rise, which one order of 5! does, one falls: 2/120 */
    @Test
    void countsPairs() {
        RankTrend trend = RankTrend.of(FIVE, new double[] {2, 3, 4, 5, 6});

        assertThat(trend.s()).isEqualTo(10);
        assertThat(trend.probability()).isCloseTo(1 / 60.0, within(1e-15));
        assertThat(trend.slope()).contains(1.0);
    }

    @Test
    void isNotMovedByHowFarAWildResultLies() {
        RankTrend low = RankTrend.of(FIVE, new double[] {5, 4.2, 3, -90, 1});

        RankTrend near = RankTrend.of(FIVE, new double[] {5, 4.2, 3, 0.9, 1});

        assertThat(low.probability()).isEqualTo(near.probability());
    }

    @Test
    void givesNoProbabilityToNoTrend() {
        assertThat(RankTrend.of(new double[] {0, 1, 2, 3}, new double[] {1, 4, 3, 0})
                        .probability())
                .isLessThanOrEqualTo(1);
        assertThat(RankTrend.of(FIVE, new double[] {1, 1, 1, 1, 1}).probability())
                .isEqualTo(1);
    }

    /** Variance with ties in both by the scipy 1.17 program: 58.0952381, S 12. */
    @Test
    void allowsForTiesInBoth() {
        RankTrend trend = RankTrend.of(new double[] {1, 1, 2, 2, 2, 3, 4, 5}, new double[] {3, 1, 1, 2, 2, 5, 5, 4});

        assertThat(trend.s()).isEqualTo(12);
        assertThat(trend.variance()).isCloseTo(58.0952381, within(5e-8));
        assertThat(trend.isExact()).isFalse();
    }

    @Test
    void leavesOutPairsOfOneDayFromTheSlope() {
        RankTrend trend = RankTrend.of(new double[] {1, 1, 2}, new double[] {0, 2, 4});

        assertThat(trend.slope()).contains(3.0);
        assertThat(RankTrend.of(new double[] {1, 1}, new double[] {0, 2}).slope())
                .isEmpty();
        assertThat(RankTrend.of(new double[] {1, 1}, new double[] {0, 2}).slopeInterval(0.95))
                .isEmpty();
    }

    /** With four results even the steadiest order happens one time in twelve. */
    @Test
    void givesNoIntervalToFourResults() {
        assertThat(RankTrend.of(new double[] {0, 1, 2, 3}, new double[] {1, 2, 3, 4.5})
                        .slopeInterval(0.95))
                .isEmpty();
        assertThat(RankTrend.of(FIVE, new double[] {1, 2, 3, 4.5, 5}).slopeInterval(0.95))
                .isPresent();
    }

    /**
     * Nine results: eight pairs out of order or fewer have probability 0.0223, nine 0.0376 (exact table), so that the 9th
     * and 28th of the 36 slopes hold the true one with 0.9554. The 10th and 27th would with 0.925.
     */
    @Test
    void holdsTheTrueSlopeAsOftenAsTheTableSays() {
        Random random = new Random(20260615);
        double[] x = {0, 1, 2, 3, 4, 5, 6, 7, 8};
        int runs = 4000;
        int held = 0;
        for (int run = 0; run < runs; run++) {
            double[] y = random.doubles(9).toArray();
            SlopeInterval interval = RankTrend.of(x, y).slopeInterval(0.95).orElseThrow();
            held += interval.low() <= 0 && interval.high() >= 0 ? 1 : 0;
        }

        double binomial = Math.sqrt(0.9554 * 0.0446 / runs);
        assertThat((double) held / runs).isCloseTo(0.9554, within(3 * binomial));
    }

    /** From 61 results on the normal distribution; at 60 it is within two hundredths of the exact probability. */
    @Test
    void goesOverToTheNormalDistribution() {
        double[] x = IntStream.range(0, 61).asDoubleStream().toArray();
        Random random = new Random(5);
        double[] y = new double[61];
        for (int i = 0; i < 61; i++) {
            y[i] = random.nextGaussian() + 0.005 * i;
        }

        RankTrend many = RankTrend.of(x, y);

        RankTrend exact = RankTrend.of(Arrays.copyOf(x, 60), Arrays.copyOf(y, 60));
        double normal = 2
                * Student.cumulative(
                        Double.POSITIVE_INFINITY, -(Math.abs(exact.s()) - 1) / Math.sqrt(exact.variance()));
        assertThat(many.isExact()).isFalse();
        assertThat(exact.isExact()).isTrue();
        assertThat(exact.probability()).isBetween(0.01, 0.5);
        assertThat(normal / exact.probability()).isCloseTo(1, within(0.02));
        SlopeInterval interval = many.slopeInterval(0.95).orElseThrow();
        assertThat(many.slope().orElseThrow()).isBetween(interval.low(), interval.high());
    }

    @Test
    void refusesBadNumbersAndLengths() {
        assertThatIllegalArgumentException().isThrownBy(() -> RankTrend.of(new double[] {1}, new double[] {1}));
        assertThatIllegalArgumentException().isThrownBy(() -> RankTrend.of(FIVE, new double[] {1, 2}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RankTrend.of(new double[] {1, Double.NaN}, new double[] {1, 2}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RankTrend.of(FIVE, FIVE).slopeInterval(1));
    }
}
