package plantair.statistics;

import java.util.Arrays;
import java.util.Optional;
import org.hipparchus.util.KthSelector;

/**
 * Whether y goes up or down with x, from the order of the results alone (T8): no uncertainty enters, and one wild result
 * counts no more than any other.
 *
 * <p>S is the number of pairs that rise with x less the number that fall. Up to 60 results without ties its probability is
 * exact, by counting the orders with so many pairs out of order; else the normal distribution stands in, one taken from |S|
 * for its steps and the variance reduced for ties in x and y.
 *
 * <p>Source: M. G. Kendall, Biometrika 30, 81 (1938), and Rank Correlation Methods (ties); slope and interval P. K. Sen, J. Am.
 * Stat. Assoc. 63, 1379 (1968); all from memory. Checked by: RankTrendReferenceTests, RankTrendTests.
 */
public final class RankTrend {

    private static final int MOST_EXACT = 60;

    /** As many as the selector keeps. */
    private static final int PIVOTS = 512;

    private final double[] x;
    private final double[] y;
    private final int pairs;
    private final int s;
    private final boolean exact;
    private final double variance;
    private final double[] upTo;

    private RankTrend(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        pairs = x.length * (x.length - 1) / 2;
        int sum = 0;
        boolean tied = false;
        for (int j = 1; j < x.length; j++) {
            for (int i = 0; i < j; i++) {
                int sign = Double.compare(x[j], x[i]) * Double.compare(y[j], y[i]);
                sum += sign;
                tied |= sign == 0;
            }
        }
        s = sum;
        exact = !tied && x.length <= MOST_EXACT;
        upTo = exact ? outOfOrder(x.length, pairs / 2) : new double[0];
        variance = Ties.in(x).varianceWith(Ties.in(y), x.length);
    }

    /**
     * The trend of y with x.
     *
     * @param x in any order, two or more
     * @param y one for each x
     * @throws IllegalArgumentException when the arrays differ in length, hold fewer than two results or a number that is not
     *     finite
     */
    public static RankTrend of(double[] x, double[] y) {
        if (x.length < 2 || y.length != x.length) {
            throw new IllegalArgumentException(
                    "x and y must be of one length, at least 2: " + x.length + ", " + y.length);
        }
        Checks.allFinite(x, "x");
        Checks.allFinite(y, "y");
        return new RankTrend(x, y);
    }

    /** Rising pairs less falling ones. */
    public int s() {
        return s;
    }

    /** Variance of S among orders that are equally likely, zero or more. */
    public double variance() {
        return variance;
    }

    /** Whether the probability is exact. */
    public boolean isExact() {
        return exact;
    }

    /** Probability of an |S| as large when y has nothing to do with x: two-sided, between 0 and 1. */
    public double probability() {
        if (s == 0) {
            return 1;
        }
        if (!exact) {
            double score = (Math.abs(s) - 1) / Math.sqrt(variance);
            return 2 * Student.cumulative(Double.POSITIVE_INFINITY, -score);
        }
        return Math.min(1, 2 * upTo[(pairs - Math.abs(s)) / 2]);
    }

    /**
     * Probabilities of 0, up to 1, … up to half of all pairs out of order in a random order: result k comes before 0 to k − 1 of
     * the earlier ones, each as likely.
     */
    private static double[] outOfOrder(int n, int last) {
        double[] probabilities = new double[last + 1];
        probabilities[0] = 1;
        for (int k = 2; k <= n; k++) {
            int reach = Math.min(last, k * (k - 1) / 2);
            cumulate(probabilities, reach);
            for (int i = reach; i >= 0; i--) {
                probabilities[i] = (probabilities[i] - (i >= k ? probabilities[i - k] : 0)) / k;
            }
        }
        cumulate(probabilities, last);
        return probabilities;
    }

    private static void cumulate(double[] values, int last) {
        for (int i = 1; i <= last; i++) {
            values[i] += values[i - 1];
        }
    }

    /** Median of the slopes of all pairs with different x; empty when all x are equal. */
    public Optional<Double> slope() {
        double[] slopes = slopes();
        return slopes.length == 0 ? Optional.empty() : Optional.of(new Ranked(slopes).median());
    }

    /** Values by rank, found without putting all in order. */
    private record Ranked(double[] values, int[] pivots) {

        Ranked(double[] values) {
            this(values, new int[PIVOTS]);
            Arrays.fill(pivots, -1);
        }

        double get(int rank) {
            return new KthSelector().select(values, pivots, rank);
        }

        double median() {
            int middle = values.length / 2;
            return values.length % 2 == 1 ? get(middle) : (get(middle - 1) + get(middle)) / 2;
        }
    }

    /**
     * That slope and its interval: the least and largest slope of a pair that leave out as many at either end as pure chance would
     * with at most half of 1 − confidence. It is one of the pairs' own slopes; nothing is interpolated.
     *
     * @param confidence between 0 and 1
     * @return empty when there are too few results for such a confidence
     * @throws IllegalArgumentException when the confidence is outside its range
     */
    public Optional<SlopeInterval> slopeInterval(double confidence) {
        double z = Student.coverageFactor(Double.POSITIVE_INFINITY, confidence);
        double[] slopes = slopes();
        int left = exact
                ? leftOut((1 - confidence) / 2)
                : (int) Math.floor((slopes.length - 1 - z * Math.sqrt(variance)) / 2) + 1;
        if (left < 1 || slopes.length == 0) {
            return Optional.empty();
        }
        Ranked ranked = new Ranked(slopes);
        return Optional.of(new SlopeInterval(ranked.get(left - 1), ranked.median(), ranked.get(slopes.length - left)));
    }

    /** How many numbers of pairs out of order, from none on, are together not probable enough. */
    private int leftOut(double improbable) {
        int count = 0;
        while (count < upTo.length && upTo[count] <= improbable) {
            count++;
        }
        return count;
    }

    private double[] slopes() {
        double[] slopes = new double[pairs];
        int count = 0;
        for (int j = 1; j < x.length; j++) {
            for (int i = 0; i < j; i++) {
                if (Double.compare(x[i], x[j]) != 0) {
                    slopes[count++] = (y[j] - y[i]) / (x[j] - x[i]);
                }
            }
        }
        return Arrays.copyOf(slopes, count);
    }
}
