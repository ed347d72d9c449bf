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
        if (!(items.stream()
                        .mapToDouble(item -> item.need().cubicMetresPerSecond())
                        .sum()
                > 0)) {
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

    /** What is left when every item runs at once, without the use factor and without a reserve. */
    public Margin atPeak() {
        return margin(capacity, items.stream().map(DemandItem::nonstop).toList());
    }

    /** Capacity less leaks. */
    public MeasuredFlow net() {
        return capacity.less(leaks);
    }

    /** Capacity less leaks when the largest machine stands. */
    public MeasuredFlow netWithoutLargest() {
        return capacity.withoutLargest().less(leaks);
    }

    /** What all items need with their reserves. */
    public MeasuredFlow need() {
        return need(items);
    }

    /** What the margin is least sure by. */
    public enum Source {
        /** What the machines deliver. */
        CAPACITY,
        /** What is lost. */
        LEAKS,
        /** What the items take. */
        DEMAND
    }

    /** Which of the three brings most of the uncertainty of the margin with the reserve; the first of equals. */
    public Source leastSure() {
        double machines = capacity.total().standardUncertainty().cubicMetresPerSecond();
        double lost = leaks.standardUncertainty().cubicMetresPerSecond();
        double taken = need().standardUncertainty().cubicMetresPerSecond();
        if (machines >= lost && machines >= taken) {
            return Source.CAPACITY;
        }
        return lost >= taken ? Source.LEAKS : Source.DEMAND;
    }

    /** Items of which not even a single one can run for long when the largest machine stands, as far as that can be told. */
    public List<DemandItem> stoppedByLoss() {
        MeasuredFlow left = netWithoutLargest();
        return items.stream()
                .filter(item -> item.each().flow().cubicMetresPerSecond() > 0)
                .filter(item -> margin(left, item.each()).verdict() == Margin.Verdict.NOT_ENOUGH)
                .toList();
    }

    private Margin margin(Capacity running, List<DemandItem> fed) {
        return margin(running.less(leaks), need(fed));
    }

    private static Margin margin(MeasuredFlow supply, MeasuredFlow need) {
        double squares = square(supply.standardUncertainty()) + square(need.standardUncertainty());
        return Margin.of(supply.flow(), need.flow(), new FlowRate(StrictMath.sqrt(squares)));
    }

    private static double square(FlowRate u) {
        return u.cubicMetresPerSecond() * u.cubicMetresPerSecond();
    }

    private MeasuredFlow need(List<DemandItem> fed) {
        double need = 0;
        double squares = 0;
        for (DemandItem item : fed) {
            need += item.need().cubicMetresPerSecond();
            squares += item.uNeed() * item.uNeed();
        }
        return new MeasuredFlow(new FlowRate(need), new FlowRate(StrictMath.sqrt(squares)), capacity.basis());
    }
}
