package plantair.supply;

import plantair.quantity.FlowRate;
import plantair.quantity.MeasuredFlow;

/**
 * Something that takes air (S10): mean use n q f, need with reserve n q f (1 + r).
 *
 * @param label how the plant calls it
 * @param count how many of them, one or more
 * @param each free air of one while it runs, zero or more, with its uncertainty
 * @param useFactor share of the time in which one runs, from 0 to 1
 * @param reserve what is added when sizing, as a part of it, zero or more
 */
public record DemandItem(String label, int count, MeasuredFlow each, double useFactor, double reserve) {

    /** @throws IllegalArgumentException when outside the range of a parameter */
    public DemandItem {
        boolean inRange = count >= 1 && each.flow().cubicMetresPerSecond() >= 0 && useFactor >= 0 && useFactor <= 1;
        if (!inRange || !(reserve >= 0 && reserve <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("no demand: " + label);
        }
    }

    /** Mean use. */
    public FlowRate use() {
        return each.flow().times(count * useFactor);
    }

    /** Use with the reserve. */
    public FlowRate need() {
        return use().times(1 + reserve);
    }

    /** All of them at once, without the use factor: what storage must carry in an event. */
    public FlowRate peak() {
        return each.flow().times(count);
    }

    /** The same, told as if there were no reserve. */
    DemandItem bare() {
        return new DemandItem(label, count, each, useFactor, 0);
    }

    /** The same, told as if all of them ran all the time and without a reserve. */
    DemandItem nonstop() {
        return new DemandItem(label, count, each, 1, 0);
    }

    /** Standard uncertainty of the need, m³/s: the same of all of a kind. */
    double uNeed() {
        return each.standardUncertainty()
                .times(count * useFactor * (1 + reserve))
                .cubicMetresPerSecond();
    }
}
