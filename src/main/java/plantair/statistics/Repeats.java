package plantair.statistics;

import java.util.Arrays;

/**
 * Mean and scatter of repeated results of one thing (M19).
 *
 * <p>Source: JCGM 100:2008, 4.2 (from memory). Deviations are taken from the mean in a second pass; sums of squares would
 * lose digits. Checked by: RepeatsTests (NIST StRD Michelso).
 *
 * @param count number of results, one or more
 * @param mean their mean, in their unit
 * @param standardDeviation of one result, in their unit; 0 for a single one, which says nothing about scatter
 * @param relativeSpread (largest − smallest)/|mean|; 0 for a single one
 */
public record Repeats(int count, double mean, double standardDeviation, double relativeSpread) {

    /**
     * The repeats of these results.
     *
     * @throws IllegalArgumentException when there is none, one is not finite, or the mean of differing ones is zero
     */
    public static Repeats of(double[] values) {
        if (values.length == 0) {
            throw new IllegalArgumentException("values must hold at least one");
        }
        Checks.allFinite(values, "values");
        double mean = Checks.finite(sum(values) / values.length, "mean of values");
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        double deviation = values.length == 1 ? 0 : Math.sqrt(squares / (values.length - 1));
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double spread = sorted[sorted.length - 1] - sorted[0];
        double relative = spread == 0 ? 0 : spread / Math.abs(mean);
        return new Repeats(
                values.length,
                mean,
                Checks.finite(deviation, "standard deviation of values"),
                Checks.finite(relative, "relative spread of values"));
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }
}
