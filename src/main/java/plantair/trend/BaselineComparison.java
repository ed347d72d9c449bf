package plantair.trend;

/**
 * A test as a part of its baseline (T5).
 *
 * @param ratio flow over baseline flow
 * @param relativeU relative standard uncertainty of the ratio, above zero
 */
public record BaselineComparison(double ratio, double relativeU) {

    /** Standard uncertainty of the ratio; 0.04 stands for 4 percent of the baseline. */
    public double standardUncertainty() {
        return ratio * relativeU;
    }
}
