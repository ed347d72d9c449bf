package plantair.statistics;

import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * The factor by which stated uncertainties are multiplied, from pooling them with the observed scatter (T3):
 *
 * <p>s² = (ν0 + χ²)/(ν0 + ν) with ν0 + ν degrees of freedom. Guard: when scatter as large as χ² has a probability below
 * 5 % the statement is not believed, and s² = χ²/ν with ν degrees of freedom.
 *
 * <p>Source: ν0 after JCGM 100:2008, G.4.2 (from memory): ν0 ≈ ½ (Δu/u)⁻², so that ν0 = 4 is a stated uncertainty good to
 * about 35 %. The pooling and the guard are a choice of this program; docs/trend.md tells why.
 *
 * <p>Checked by: OutputTrendReferenceTests, PooledScatterTests.
 *
 * @param s factor on the stated uncertainties, above zero
 * @param degreesOfFreedom of s, above zero
 * @param guardFired whether the scatter was larger than the stated uncertainties allow
 */
public record PooledScatter(double s, double degreesOfFreedom, boolean guardFired) {

    private static final double IMPROBABLE = 0.05;
    private static final double POWER = 0.8;

    /** @throws IllegalArgumentException when outside the ranges of the parameters */
    public PooledScatter {
        Checks.positive(s, "s");
        Checks.positive(degreesOfFreedom, "degreesOfFreedom");
    }

    /**
     * What the scatter of a fit says about the stated uncertainties.
     *
     * @param chiSquare weighted sum of squared residuals, zero or more
     * @param nu its degrees of freedom, zero or more; zero leaves the stated uncertainties as they are
     * @param nu0 degrees of freedom that the stated uncertainties are worth, above zero
     * @throws IllegalArgumentException when outside the ranges of the parameters
     */
    public static PooledScatter of(double chiSquare, int nu, double nu0) {
        Checks.notNegative(chiSquare, "chiSquare");
        Checks.notNegative(nu, "nu");
        Checks.positive(nu0, "nu0");
        if (nu > 0 && 1 - new ChiSquaredDistribution(nu).cumulativeProbability(chiSquare) < IMPROBABLE) {
            return new PooledScatter(Math.sqrt(chiSquare / nu), nu, true);
        }
        return new PooledScatter(Math.sqrt((nu0 + chiSquare) / (nu0 + nu)), nu0 + nu, false);
    }

    /**
     * Half-width of a two-sided interval in standard uncertainties: Student's t.
     *
     * @param confidence probability that the interval holds the value, between 0 and 1
     * @throws IllegalArgumentException when the confidence is outside its range
     */
    public double coverageFactor(double confidence) {
        return Student.coverageFactor(degreesOfFreedom, confidence);
    }

    /**
     * The slope that would have been told from zero four times in five, in standard uncertainties of the slope (T11).
     *
     * <p>The sum of two Student factors stands in for the non-central distribution; it is less than 1 % below from five degrees
     * of freedom on, 2 % at three, 5 % at two.
     *
     * @param confidence of the two-sided interval that must leave zero out, between 0 and 1
     * @throws IllegalArgumentException when the confidence is outside its range
     */
    public double detectionFactor(double confidence) {
        return coverageFactor(confidence) + Student.quantile(degreesOfFreedom, POWER);
    }
}
