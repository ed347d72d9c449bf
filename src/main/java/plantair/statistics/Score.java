package plantair.statistics;

/**
 * How far a deviation is out of the common, in standard uncertainties (T10).
 *
 * @param value the deviation over its standard uncertainty
 * @param probability that chance alone would make one as large, either way: between 0 and 1
 */
public record Score(double value, double probability) {

    /**
     * The score of a deviation. Source: JCGM 100:2008, G.3 (from memory). Checked by: ScoreTests.
     *
     * @param deviation from what was expected
     * @param u its standard uncertainty in the same unit, above zero
     * @param degreesOfFreedom of u, above zero, may be infinite
     * @throws IllegalArgumentException when outside the ranges of the parameters
     */
    public static Score of(double deviation, double u, double degreesOfFreedom) {
        double value = Checks.finite(deviation, "deviation") / Checks.positive(u, "u");
        return new Score(value, 2 * Student.cumulative(degreesOfFreedom, -Math.abs(value)));
    }
}
