package plantair.supply;

import java.util.List;
import plantair.quantity.FlowRate;
import plantair.quantity.MeasuredFlow;

/**
 * Whether a site has enough air (S14): capacity less leaks less need. Capacity, leaks and items count as independent of each
 * other. A leak found by load times rises with the capacity, which makes the true uncertainty of the difference a little
 * smaller than the one stated.
 *
 * <p>Checked by: SupplyAndDemandTests.
 *
 * @param capacity measured, at the pressure of the site
 * @param leaks what is lost at that pressure
 * @param items what takes air, together above zero
 */
public record SupplyAndDemand(Capacity capacity, MeasuredFlow leaks, List<DemandItem> items) {

    /** @throws IllegalArgumentException when flows are of different bases, or nothing takes air */
    public SupplyAndDemand {
        items = List.copyOf(items);
        boolean oneBasis = leaks.basis() == capacity.basis()
                && items.stream().allMatch(item -> item.each().basis() == capacity.basis());
        if (!oneBasis) {
            throw new IllegalArgumentException("flows must be of one basis: " + capacity.basis());
        }
        if (!(need(items) > 0)) {
            throw new IllegalArgumentException("something must take air");
        }
    }

    /** What is left when every item takes its mean use. */
    public Margin withoutReserve() {
        return margin(capacity, items.stream().map(DemandItem::bare).toList());
    }

    /** What is left when every item gets its reserve too: whether there is enough. */
    public Margin withReserve() {
        return margin(capacity, items);
    }

    /** What is left of the mean use when the largest machine stands. */
    public Margin withoutLargest() {
        return margin(
                capacity.withoutLargest(), items.stream().map(DemandItem::bare).toList());
    }

    private Margin margin(Capacity running, List<DemandItem> fed) {
        MeasuredFlow total = running.total();
        double supply = total.flow().cubicMetresPerSecond() - leaks.flow().cubicMetresPerSecond();
        double squares = square(total.standardUncertainty()) + square(leaks.standardUncertainty());
        for (DemandItem item : fed) {
            squares += item.uNeed() * item.uNeed();
        }
        return Margin.of(new FlowRate(supply), new FlowRate(need(fed)), new FlowRate(StrictMath.sqrt(squares)));
    }

    private static double square(FlowRate u) {
        return u.cubicMetresPerSecond() * u.cubicMetresPerSecond();
    }

    private static double need(List<DemandItem> items) {
        double need = 0;
        for (DemandItem item : items) {
            need += item.need().cubicMetresPerSecond();
        }
        return need;
    }
}
