package plantair.trend;

/**
 * Change of delivered flow in a year (T4).
 *
 * @param percent percent a year, below zero when the flow falls; above −100
 * @param standardUncertainty of the percentage, in percent a year
 * @param lowPercent lower end of the 95 % interval, percent a year
 * @param highPercent upper end of the 95 % interval, percent a year
 */
public record YearlyChange(double percent, double standardUncertainty, double lowPercent, double highPercent) {

    /**
     * From the slope of ln q.
     *
     * @param slope 1/a
     * @param u its standard uncertainty, 1/a
     * @param k coverage factor for 95 %
     */
    static YearlyChange of(double slope, double u, double k) {
        return new YearlyChange(
                percent(slope), 100 * StrictMath.exp(slope) * u, percent(slope - k * u), percent(slope + k * u));
    }

    /** Of a slope of ln q. */
    static double percent(double slope) {
        return 100 * StrictMath.expm1(slope);
    }

    boolean isFinite() {
        return Double.isFinite(standardUncertainty) && Double.isFinite(highPercent);
    }
}
