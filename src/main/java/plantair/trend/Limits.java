package plantair.trend;

/**
 * Parts of the baseline below which something is to be done, in whole percent. The defaults are this program's own: only a
 * condemning limit near 80 % is published for some machines.
 *
 * @param watchBelow below it, watch; at most 100
 * @param planBelow below it, plan the work; below {@code watchBelow}
 * @param actBelow below it, act; below {@code planBelow}, above 0
 */
public record Limits(int watchBelow, int planBelow, int actBelow) {

    /** 95, 90 and 80 percent. */
    public static final Limits DEFAULT = new Limits(95, 90, 80);

    /** @throws IllegalArgumentException when not in falling order between 100 and 0 */
    public Limits {
        if (!(watchBelow <= 100 && planBelow < watchBelow && actBelow < planBelow && actBelow > 0)) {
            throw new IllegalArgumentException(
                    "limits must fall from 100 to 0: " + watchBelow + ", " + planBelow + ", " + actBelow);
        }
    }

    Standing of(double ratio) {
        double percent = 100 * ratio;
        if (percent < actBelow) {
            return Standing.ACT;
        }
        if (percent < planBelow) {
            return Standing.PLAN;
        }
        return percent < watchBelow ? Standing.WATCH : Standing.OK;
    }
}
