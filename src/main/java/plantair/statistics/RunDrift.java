package plantair.statistics;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Whether the runs of one test fall or rise in the order they were made (M19). */
public final class RunDrift {

    private RunDrift() {}

    /**
     * Slope of the runs against their number, divided by its standard uncertainty. Below −2 or above 2 the runs drift by
     * more than chance would do one time in twenty. Checked by: RunDriftTests.
     *
     * @param values results in the order they were made, two or more, their mean not zero
     * @param relativeU relative standard uncertainty of one run from causes that differ between runs, above zero
     * @return the slope in standard uncertainties; negative when the runs fall
     * @throws IllegalArgumentException when outside the ranges of the parameters
     */
    public static double score(double[] values, double relativeU) {
        Checks.positive(relativeU, "relativeU");
        double[] u = new double[values.length];
        Arrays.fill(u, relativeU * Math.abs(Repeats.of(values).mean()));
        double[] order = IntStream.range(0, values.length).asDoubleStream().toArray();
        LineFit line = WeightedLine.fit(order, values, u);
        return line.slope() / line.uSlope();
    }
}
