package plantair.trend;

import plantair.quantity.FlowRate;

/** A test against the compressor's own baseline test (T5). */
public final class Baseline {

    private Baseline() {}

    /**
     * Flow over baseline flow, on one basis; 0.93 is 93 %.
     *
     * @param flow delivered flow now
     * @param baseline delivered flow of the baseline test, above zero
     * @throws IllegalArgumentException when the baseline is not above zero, or so small that the ratio is no number
     */
    public static double ratio(FlowRate flow, FlowRate baseline) {
        double ratio = flow.cubicMetresPerSecond() / baseline.cubicMetresPerSecond();
        if (!(baseline.cubicMetresPerSecond() > 0 && Math.abs(ratio) <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    "baseline must be positive: " + baseline.cubicMetresPerSecond() + " m³/s");
        }
        return ratio;
    }

    /**
     * The comparison of two different tests, each with the uncertainty from causes that differ between tests. Errors that
     * both share cancel in the ratio.
     */
    public static BaselineComparison compare(OutputPoint test, OutputPoint baseline) {
        double u = Math.sqrt(test.relativeU() * test.relativeU() + baseline.relativeU() * baseline.relativeU());
        return new BaselineComparison(ratio(test.flow(), baseline.flow()), u);
    }
}
