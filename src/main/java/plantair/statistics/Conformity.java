package plantair.statistics;

/**
 * What a result and its uncertainty say about a limit: (y − y_true)/u follows Student's distribution with the degrees of
 * freedom of u, which is the normal one when u is taken as known exactly.
 *
 * <p>Student's is used however many degrees there are. A switch to the normal distribution at some number of them would let
 * a verdict change on a thousandth of a degree.
 *
 * <p>Source: JCGM 106:2012, 7.3 (from memory). Checked by: ConformityTests.
 */
public final class Conformity {

    /** Probability from which a result is said to lie above the limit; below it when at most 1 − this. */
    public static final double SURE = 0.95;

    private Conformity() {}

    /**
     * Probability that the true value lies above the limit, the uncertainty being known exactly.
     *
     * @param estimate the result
     * @param u its standard uncertainty, above zero, in the same unit
     * @param limit in the same unit
     * @return between 0 and 1
     * @throws IllegalArgumentException when outside the ranges of the parameters
     */
    public static double probabilityAbove(double estimate, double u, double limit) {
        return probabilityAbove(estimate, u, limit, Double.POSITIVE_INFINITY);
    }

    /**
     * Probability that the true value lies above the limit.
     *
     * @param estimate the result
     * @param u its standard uncertainty, above zero, in the same unit
     * @param limit in the same unit
     * @param degreesOfFreedom of u, above zero, may be infinite
     * @return between 0 and 1
     * @throws IllegalArgumentException when outside the ranges of the parameters
     */
    public static double probabilityAbove(double estimate, double u, double limit, double degreesOfFreedom) {
        double distance = Checks.finite(estimate, "estimate") - Checks.finite(limit, "limit");
        double score = distance / Checks.positive(u, "u");
        return Student.cumulative(degreesOfFreedom, score);
    }

    /**
     * Largest standard uncertainty with which this result would settle the question: at which the probability is
     * {@link #SURE} when the result is above the limit, 1 − {@link #SURE} when below. It is known exactly.
     *
     * @param estimate the result
     * @param limit in the same unit
     * @return in the same unit, zero or more; zero when the result stands at the limit, where no uncertainty would do
     * @throws IllegalArgumentException when outside the ranges of the parameters
     */
    public static double settlingUncertainty(double estimate, double limit) {
        return settlingUncertainty(estimate, limit, Double.POSITIVE_INFINITY);
    }

    /**
     * Largest standard uncertainty with which this result would settle the question, known with these degrees of freedom.
     *
     * @param degreesOfFreedom above zero, may be infinite
     * @throws IllegalArgumentException when outside the ranges of the parameters
     * @see #settlingUncertainty(double, double)
     */
    public static double settlingUncertainty(double estimate, double limit, double degreesOfFreedom) {
        double distance = Checks.finite(estimate, "estimate") - Checks.finite(limit, "limit");
        return Math.abs(distance) / Student.quantile(degreesOfFreedom, SURE);
    }
}
