package plantair.statistics;

import java.util.Arrays;

/**
 * How often values repeat: sums over the groups of t equal ones.
 *
 * @param two sum of t(t−1)
 * @param three sum of t(t−1)(t−2)
 * @param weighted sum of t(t−1)(2t+5)
 */
record Ties(double two, double three, double weighted) {

    static Ties in(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        Ties ties = new Ties(0, 0, 0);
        int start = 0;
        for (int i = 1; i <= sorted.length; i++) {
            if (i == sorted.length || sorted[i] > sorted[start]) {
                ties = ties.with(i - start);
                start = i;
            }
        }
        return ties;
    }

    private Ties with(int t) {
        double pairs = (double) t * (t - 1);
        return new Ties(two + pairs, three + pairs * (t - 2), weighted + pairs * (2 * t + 5));
    }

    /** Variance of rising less falling pairs among n results, these ties in one variable and those in the other. */
    double varianceWith(Ties other, int n) {
        double pairs = (double) n * (n - 1);
        double inBoth = two * other.two / (2 * pairs);
        double threes = n > 2 ? three * other.three / (9 * pairs * (n - 2)) : 0;
        return (pairs * (2 * n + 5) - weighted - other.weighted) / 18 + inBoth + threes;
    }
}
