package plantair.statistics;

import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** Student's distribution; with endless degrees of freedom it is the normal one. */
final class Student {

    /** From here on the two agree to 1e-8 of a probability, and Student's is slow to compute. */
    private static final double ENDLESS = 1e8;

    private static final RealDistribution NORMAL = new NormalDistribution(0, 1);

    /** Trends ask for the same few values again and again, and each takes 10 µs to find. */
    private static final Map<Asked, Double> KEPT = Collections.synchronizedMap(new HashMap<>());

    private static final int MOST_KEPT = 5000;

    private record Asked(double degreesOfFreedom, double p) {}

    private Student() {}

    /** Probability of a value up to x. */
    static double cumulative(double degreesOfFreedom, double x) {
        return of(degreesOfFreedom).cumulativeProbability(x);
    }

    /** The value with probability p of another up to it; p between 0 and 1. */
    static double quantile(double degreesOfFreedom, double p) {
        if (degreesOfFreedom != Math.rint(degreesOfFreedom) || KEPT.size() >= MOST_KEPT) {
            return of(degreesOfFreedom).inverseCumulativeProbability(p);
        }
        return KEPT.computeIfAbsent(
                new Asked(degreesOfFreedom, p),
                asked -> of(asked.degreesOfFreedom).inverseCumulativeProbability(asked.p));
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
