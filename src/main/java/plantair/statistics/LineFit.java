package plantair.statistics;

/**
 * A fitted straight line y = level + slope (x − centre), with the stated uncertainties trusted (s = 1). Level and slope
 * are then uncorrelated.
 *
 * @param centre weighted mean of x, in the unit of x
 * @param level height of the line at the centre, in the unit of y
 * @param slope in the unit of y per unit of x
 * @param uLevel standard uncertainty of the level, above zero
 * @param uSlope standard uncertainty of the slope, above zero
 * @param chiSquare weighted sum of squared residuals, zero or more
 * @param degreesOfFreedom points less two, zero or more
 */
public record LineFit(
        double centre,
        double level,
        double slope,
        double uLevel,
        double uSlope,
        double chiSquare,
        int degreesOfFreedom) {

    /** @throws IllegalArgumentException when outside the ranges of the parameters */
    public LineFit {
        Checks.finite(centre, "centre");
        Checks.finite(level, "level");
        Checks.finite(slope, "slope");
        Checks.positive(uLevel, "uLevel");
        Checks.positive(uSlope, "uSlope");
        if (!(Checks.finite(chiSquare, "chiSquare") >= 0 && degreesOfFreedom >= 0)) {
            throw new IllegalArgumentException(
                    "chiSquare and degreesOfFreedom must not be negative: " + chiSquare + ", " + degreesOfFreedom);
        }
    }

    /** Height of the line at x. */
    public double valueAt(double x) {
        return level + slope * (x - centre);
    }

    /** Standard uncertainty of the height at x, the stated uncertainties trusted; multiply by s of the pooled scatter. */
    public double uncertaintyAt(double x) {
        double fromSlope = uSlope * (x - centre);
        return Math.sqrt(uLevel * uLevel + fromSlope * fromSlope);
    }

    /**
     * Observed scatter over stated uncertainty, √(χ²/ν). Near 1 when the stated uncertainties are right. Source: Birge,
     * Physical Review 40, 207 (1932), from memory.
     *
     * @throws IllegalStateException when two points leave no scatter to look at
     */
    public double birgeRatio() {
        if (degreesOfFreedom == 0) {
            throw new IllegalStateException("two points have no scatter about their line");
        }
        return Math.sqrt(chiSquare / degreesOfFreedom);
    }

    /**
     * What the scatter says about the stated uncertainties (T3).
     *
     * @param nu0 degrees of freedom that the stated uncertainties are worth, above zero
     */
    public PooledScatter pooled(double nu0) {
        return PooledScatter.of(chiSquare, degreesOfFreedom, nu0);
    }
}
