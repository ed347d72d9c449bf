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
     * The comparison of two different tests. Errors that both share cancel in the ratio; what only one of them has counts.
     */
    public static BaselineComparison compare(OutputPoint test, OutputPoint baseline) {
        double squares = test.relativeU() * test.relativeU() + baseline.relativeU() * baseline.relativeU();
        squares += sharedVariance(test, baseline);
        return new BaselineComparison(ratio(test.flow(), baseline.flow()), Math.sqrt(squares));
    }

    /**
     * The line at a day against the baseline test. The uncertainty of the line allows for the errors that change inside the
     * record.
     */
    public static BaselineComparison compare(Level line, OutputPoint baseline) {
        return new BaselineComparison(
                ratio(line.flow(), baseline.flow()), StrictMath.hypot(line.relativeU(), baseline.relativeU()));
    }

    private static double sharedVariance(OutputPoint test, OutputPoint baseline) {
        double variance = 0;
        for (SharedError error : test.shared()) {
            variance += square(error.relativeU() * (error.coefficient() - coefficient(baseline, error)));
        }
        for (SharedError error : baseline.shared()) {
            if (test.shared().stream().noneMatch(error::isSameAs)) {
                variance += square(error.relativeU() * error.coefficient());
            }
        }
        return variance;
    }

    private static double coefficient(OutputPoint point, SharedError error) {
        return point.shared().stream()
                .filter(error::isSameAs)
                .mapToDouble(SharedError::coefficient)
                .findFirst()
                .orElse(0);
    }

    private static double square(double x) {
        return x * x;
    }
}
