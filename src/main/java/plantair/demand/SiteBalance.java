package plantair.demand;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.FlowBasis;
import plantair.quantity.GaugePressure;
import plantair.quantity.MeasuredFlow;
import plantair.supply.Capacity;
import plantair.supply.DemandItem;
import plantair.supply.SupplyAndDemand;

/**
 * Supply and demand of a site, as free air at its intake.
 *
 * @param siteId the site
 * @param site its name
 * @param station its barometric pressure
 * @param at pressure at which the supply is told, gauge; null while no machine has a test and the site has not chosen
 * @param choice what the site has chosen
 * @param machines those that count
 * @param leftOut those in service that do not
 * @param leaks what is lost
 * @param items what takes air
 */
public record SiteBalance(
        long siteId,
        String site,
        AbsolutePressure station,
        @Nullable GaugePressure at,
        SupplyFacts choice,
        List<CountedMachine> machines,
        List<LeftOutMachine> leftOut,
        LeaksUsed leaks,
        List<ItemUse> items) {

    /** Keeps copies. */
    public SiteBalance {
        machines = List.copyOf(machines);
        leftOut = List.copyOf(leftOut);
        items = List.copyOf(items);
    }

    /** Of the machines that count. */
    public Capacity capacity() {
        return new Capacity(machines.stream().map(CountedMachine::part).toList(), FlowBasis.INTAKE);
    }

    /** Capacity less leaks. */
    public MeasuredFlow net() {
        return capacity().less(leaks.flow());
    }

    /** Capacity less leaks when the largest machine stands. */
    public MeasuredFlow netWithoutLargest() {
        return capacity().withoutLargest().less(leaks.flow());
    }

    /** The answer; empty while no machine counts, or nothing takes air. */
    public Optional<SupplyAndDemand> answer() {
        return answer(ItemUse::now);
    }

    /** The answer when every blast nozzle is worn to the next bore; empty where there is none to wear. */
    public Optional<SupplyAndDemand> worn() {
        return items.stream().anyMatch(use -> use.worn() != null) ? answer(ItemUse::later) : Optional.empty();
    }

    /** What cannot be kept running without the largest machine, not even alone; events live on what is stored. */
    public List<DemandItem> stoppedByLoss(SupplyAndDemand answer) {
        List<DemandItem> steady = items.stream()
                .filter(use -> use.facts().kind() != DemandKind.EVENT)
                .map(ItemUse::now)
                .flatMap(Optional::stream)
                .toList();
        return answer.stoppedByLoss().stream().filter(steady::contains).toList();
    }

    /** Whether machines are left out that may well deliver. */
    public boolean hasGaps() {
        return leftOut.stream().anyMatch(machine -> machine.why().isGap());
    }

    private Optional<SupplyAndDemand> answer(Function<ItemUse, Optional<DemandItem>> air) {
        List<DemandItem> fed = items.stream().map(air).flatMap(Optional::stream).toList();
        boolean takesAir = fed.stream().anyMatch(item -> item.need().cubicMetresPerSecond() > 0);
        return machines.isEmpty() || !takesAir
                ? Optional.empty()
                : Optional.of(new SupplyAndDemand(capacity(), leaks.flow(), fed));
    }
}
