package plantair.statistics;

import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** Student's distribution; with endless degrees of freedom it is the normal one. */
final class Student {

    /** From here on the two agree to 1e-8 of a probability, and Student's is slow to compute. */
    private static final double ENDLESS = 1e8;

    private static final RealDistribution NORMAL = new NormalDistribution(0, 1);

    private Student() {}

    /** Probability of a value up to x. */
    static double cumulative(double degreesOfFreedom, double x) {
        return of(degreesOfFreedom).cumulativeProbability(x);
    }

    /** The value with probability p of another up to it; p between 0 and 1. */
    static double quantile(double degreesOfFreedom, double p) {
        return of(degreesOfFreedom).inverseCumulativeProbability(p);
    }

    /** Half-width of a two-sided interval in standard uncertainties. */
    static double coverageFactor(double degreesOfFreedom, double confidence) {
        if (!(confidence > 0 && confidence < 1)) {
            throw new IllegalArgumentException("confidence must be between 0 and 1: " + confidence);
        }
        return quantile(degreesOfFreedom, (1 + confidence) / 2);
    }

    private static RealDistribution of(double degreesOfFreedom) {
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("degreesOfFreedom must be positive: " + degreesOfFreedom);
        }
        return degreesOfFreedom < ENDLESS ? new TDistribution(degreesOfFreedom) : NORMAL;
    }
}
