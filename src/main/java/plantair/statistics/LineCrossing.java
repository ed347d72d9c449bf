package plantair.statistics;

/**
 * Where a falling line reaches a limit (T9), after E. C. Fieller, J. R. Stat. Soc. B 16, 175 (1954), from memory: all x at
 * which a line height equal to the limit is not refused at the confidence of k.
 *
 * <p>With A = b² − k²u_b², B = b(L − ȳ), C = (L − ȳ)² − k²(u_ȳ² + u_shared²), both ends are x̄ + (B ∓ √(B² − AC))/A. A slope
 * that may be zero (A ≤ 0) leaves no latest x: the line may never get there.
 *
 * <p>Checked by: LineCrossingReferenceTests, LineCrossingTests.
 *
 * @param kind what can be said
 * @param best x of the line itself; NaN unless BOUNDED
 * @param earliest lower end; NaN unless BOUNDED or NOT_BEFORE; it may lie before the last result
 * @param latest upper end; NaN unless BOUNDED
 */
public record LineCrossing(Kind kind, double best, double earliest, double latest) {

    /** What can be said of the crossing. */
    public enum Kind {
        /** The line falls and reaches the limit between two ends. */
        BOUNDED,
        /** Not before an earliest x; there is no latest. */
        NOT_BEFORE,
        /** The line rises. */
        NOT_COMING,
        /** The line may be on either side of the limit, and its slope does not tell. */
        UNKNOWN
    }

    /**
     * The crossing.
     *
     * @param line its uncertainties scaled to the scatter
     * @param k coverage factor of Student's distribution, above zero
     * @param uShared standard uncertainty that the whole line has in common against the limit, zero or more
     * @param limit in the unit of y
     * @throws IllegalArgumentException when outside the ranges of the parameters
     */
    public static LineCrossing of(LineFit line, double k, double uShared, double limit) {
        Checks.positive(k, "k");
        double shared = Checks.notNegative(uShared, "uShared") * uShared;
        double b = line.slope();
        double drop = Checks.finite(limit, "limit") - line.level();
        double a = b * b - k * k * line.uSlope() * line.uSlope();
        double c = drop * drop - k * k * (line.uLevel() * line.uLevel() + shared);
        if (a > 0 && b > 0) {
            return new LineCrossing(Kind.NOT_COMING, Double.NaN, Double.NaN, Double.NaN);
        }
        double root = Math.sqrt(Math.max(0, b * b * drop * drop - a * c));
        if (a > 0) {
            double middle = b * drop;
            return new LineCrossing(
                    Kind.BOUNDED,
                    line.centre() + drop / b,
                    line.centre() + (middle - root) / a,
                    line.centre() + (middle + root) / a);
        }
        if (!(c > 0 && drop < 0)) {
            return new LineCrossing(Kind.UNKNOWN, Double.NaN, Double.NaN, Double.NaN);
        }
        // c/(B + √…) is the root right of the centre and holds for a = 0 too, unless the line then rises
        double distance = c / (b * drop + root);
        return distance > 0 && Double.isFinite(distance)
                ? new LineCrossing(Kind.NOT_BEFORE, Double.NaN, line.centre() + distance, Double.NaN)
                : new LineCrossing(Kind.NOT_COMING, Double.NaN, Double.NaN, Double.NaN);
    }
}
