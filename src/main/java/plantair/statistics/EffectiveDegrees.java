package plantair.statistics;

/**
 * How well a combined standard uncertainty is itself known, as degrees of freedom (Welch–Satterthwaite):
 * ν_eff = u_c⁴ / Σ(u_i⁴/ν_i).
 *
 * <p>Source: JCGM 100:2008, G.4 (from memory). The uncertainties go in unrounded, and the result is cut to the whole number
 * below it only then. Checked by: GumReferenceTests (H.1), EffectiveDegreesTests.
 *
 * @param unrounded ν_eff, one or more; infinite when every contribution is taken as known exactly
 */
public record EffectiveDegrees(double unrounded) {

    /** A quotient that is whole but for the last digits of a double is whole. */
    private static final double LAST_DIGITS = 1e-12;

    /** @throws IllegalArgumentException when below one */
    public EffectiveDegrees {
        atLeastOne(unrounded, "unrounded");
    }

    /**
     * The degrees of freedom of √Σu_i².
     *
     * @param contributions c_i u_i of each independent input, in the unit of the result, not all zero; the sign is ignored
     * @param degrees ν_i of each, one or more; infinite for one taken as known exactly
     * @throws IllegalArgumentException when the arrays differ in length or hold something outside these ranges
     */
    public static EffectiveDegrees of(double[] contributions, double[] degrees) {
        if (contributions.length != degrees.length) {
            throw new IllegalArgumentException(
                    "contributions and degrees must be of one length: " + contributions.length + ", " + degrees.length);
        }
        double combined = Checks.positive(LinearPropagation.combined(contributions), "combined uncertainty");
        double sum = 0;
        for (int i = 0; i < contributions.length; i++) {
            double share = contributions[i] / combined;
            sum += share * share * share * share / atLeastOne(degrees[i], "degrees[" + i + "]");
        }
        return new EffectiveDegrees(Math.max(1, 1 / sum));
    }

    /** ν_eff cut to the whole number below it (G.4.1); infinite stays so. */
    public double truncated() {
        return Math.floor(unrounded * (1 + LAST_DIGITS));
    }

    /**
     * Half-width of a two-sided interval in combined standard uncertainties: Student's t with the truncated degrees of
     * freedom, the normal factor when they are infinite.
     *
     * @param confidence probability that the interval holds the value, between 0 and 1
     * @throws IllegalArgumentException when the confidence is outside its range
     */
    public double coverageFactor(double confidence) {
        return Student.coverageFactor(truncated(), confidence);
    }

    private static double atLeastOne(double degrees, String name) {
        if (!(degrees >= 1)) {
            throw new IllegalArgumentException(name + " must be at least 1: " + degrees);
        }
        return degrees;
    }
}
