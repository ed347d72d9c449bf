package plantair.statistics;

/**
 * Standard uncertainty from what a plate, a class or a certificate states (M20).
 *
 * <p>Source: JCGM 100:2008, 4.3 (from memory). Checked by: TypeBTests, GumReferenceTests.
 */
public final class TypeB {

    private TypeB() {}

    /**
     * Limits ± a, every value between them alike likely: u = a/√3.
     *
     * @param halfWidth a, in the unit of the quantity, zero or more
     * @throws IllegalArgumentException when outside its range
     */
    public static double rectangular(double halfWidth) {
        return Checks.notNegative(halfWidth, "halfWidth") / Math.sqrt(3);
    }

    /**
     * Limits ± a, values near the middle likelier in proportion: u = a/√6.
     *
     * @param halfWidth a, in the unit of the quantity, zero or more
     * @throws IllegalArgumentException when outside its range
     */
    public static double triangular(double halfWidth) {
        return Checks.notNegative(halfWidth, "halfWidth") / Math.sqrt(6);
    }

    /**
     * An expanded uncertainty ± U = k u, as certificates give it: u = U/k.
     *
     * @param halfWidth U, in the unit of the quantity, zero or more
     * @param coverageFactor k, above zero; 2 on most certificates
     * @throws IllegalArgumentException when outside its range
     */
    public static double normal(double halfWidth, double coverageFactor) {
        return Checks.notNegative(halfWidth, "halfWidth") / Checks.positive(coverageFactor, "coverageFactor");
    }
}
