package plantair.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sources, status and tolerances stand in the head of each table under reference/statistics. */
class RankTrendReferenceTests {

    @Test
    void agreesWithEpaSulfateExampleThatHasTies() {
        ReferenceTable sulfate = ReferenceTable.read("epa_17_6_sulfate.csv");

        RankTrend trend = RankTrend.of(sulfate.column("date"), sulfate.column("ppm"));

        assertThat(trend.isExact()).isFalse();
        assertThat(trend.s()).isEqualTo(194);
        assertThat(trend.variance()).isCloseTo(1428.0, within(0.05));
        assertThat((trend.s() - 1) / Math.sqrt(trend.variance())).isCloseTo(5.107322, within(5e-7));
        assertThat(trend.probability()).isCloseTo(3.267574e-07, within(5e-14));
        assertThat(trend.slope().orElseThrow()).isCloseTo(26.6666667, within(5e-8));
    }

    /** The published interval, 0.399 to 2.333, lies between the 11th and 12th and the 34th and 35th slope; ours are 12 and 34. */
    @Test
    void agreesWithEpaSodiumExampleExactly() {
        ReferenceTable sodium = ReferenceTable.read("epa_17_7_sodium.csv");

        RankTrend trend = RankTrend.of(sodium.column("date"), sodium.column("ppm"));

        assertThat(trend.isExact()).isTrue();
        assertThat(trend.s()).isEqualTo(25);
        assertThat(trend.variance()).isCloseTo(125, within(1e-9));
        assertThat((trend.s() - 1) / Math.sqrt(trend.variance())).isCloseTo(2.146625, within(5e-7));
        assertThat(trend.probability()).isCloseTo(0.028609457672, within(5e-13));
        assertThat(trend.slope().orElseThrow()).isCloseTo(1.3333333, within(5e-8));
        SlopeInterval interval = trend.slopeInterval(0.95).orElseThrow();
        assertThat(interval.low()).isCloseTo(0.4545455, within(5e-8));
        assertThat(interval.high()).isCloseTo(2.3333333, within(5e-8));
    }

    @Test
    void agreesWithGilbert() {
        double[] y = ReferenceTable.read("gilbert_p212.csv").column("y");

        RankTrend trend = RankTrend.of(IntStream.range(0, 22).asDoubleStream().toArray(), y);

        assertThat(trend.s()).isEqualTo(111);
        assertThat(trend.variance()).isCloseTo(1226.33, within(5e-3));
        assertThat((trend.s() - 1) / Math.sqrt(trend.variance())).isCloseTo(3.1, within(0.05));
    }

    /**
     * Two-sided probabilities as in any table of Kendall's statistic; here computed by a separate program, two of them
     * checked with R 4.2.2 (n = 9, S 28: 0.002425044092; n = 10, S 25: 0.028609457672).
     */
    @ParameterizedTest
    @CsvSource({
        "4, 6, 0.08333", "5, 10, 0.01667", "5, 8, 0.08333", "6, 15, 0.00278", "6, 13, 0.01667", "6, 11, 0.05556",
        "7, 15, 0.03016", "7, 13, 0.06905", "8, 18, 0.03115", "8, 16, 0.06101", "9, 20, 0.04462", "9, 28, 0.00243",
        "10, 23, 0.04662", "10, 21, 0.07255", "10, 25, 0.02861"
    })
    void agreesWithTheExactTable(int n, int s, double expected) {
        double[] order = IntStream.range(0, n).asDoubleStream().toArray();

        RankTrend rising = RankTrend.of(order, withPairsOutOfOrder(n, (n * (n - 1) / 2 - s) / 2));
        RankTrend falling = RankTrend.of(order, withPairsOutOfOrder(n, (n * (n - 1) / 2 + s) / 2));

        assertThat(rising.s()).isEqualTo(s);
        assertThat(falling.s()).isEqualTo(-s);
        assertThat(rising.probability()).isCloseTo(expected, within(5e-6));
        assertThat(falling.probability()).isEqualTo(rising.probability());
    }

    /** Own nine tests: S −28 and its probability by R; the median slope by a separate program. */
    @Test
    void agreesWithROnNineTests() {
        ReferenceTable tests = ReferenceTable.read("nine_tests.csv");
        double[] t = {0, 97, 179, 303, 386, 567, 701, 856, 1030};
        double[] y = tests.column("q_L_per_min");
        for (int i = 0; i < 9; i++) {
            t[i] /= 365.25;
            y[i] = Math.log(y[i]);
        }

        RankTrend trend = RankTrend.of(t, y);

        assertThat(trend.s()).isEqualTo(-28);
        assertThat(trend.probability()).isCloseTo(0.0024250441, within(5e-11));
        assertThat(trend.slope().orElseThrow()).isCloseTo(-0.020936660, within(5e-10));
    }

    /** 0, 1, … with the last of them moved forward, largest first, until so many pairs are out of order. */
    private static double[] withPairsOutOfOrder(int n, int pairs) {
        double[] y = IntStream.range(0, n).asDoubleStream().toArray();
        int left = pairs;
        for (int largest = n - 1; left > 0; largest--) {
            int places = Math.min(left, largest);
            for (int i = n - 1; i > n - 1 - places; i--) {
                double moved = y[i];
                y[i] = y[i - 1];
                y[i - 1] = moved;
            }
            left -= places;
        }
        return y;
    }
}
