package plantair.demand;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;
import plantair.register.FactLines;
import plantair.register.Facts;

/**
 * How a site reckons its supply.
 *
 * @param site its name
 * @param workingPressure at which the supply is told, gauge; null while the site has not chosen
 * @param reserve for items that name none; null for none
 * @param uncertainty relative standard uncertainty of items that name none; null for the usual one of each kind
 * @param leaksFrom where the leaks come from
 * @param leaks free air at that pressure; null unless it was typed
 * @param leaksUncertainty its relative standard uncertainty; null for the usual one
 * @param standby machines that do not run together with the others
 * @param note free text, may be empty
 */
public record SupplyFacts(
        String site,
        @Nullable Entered workingPressure,
        @Nullable Entered reserve,
        @Nullable Entered uncertainty,
        LeaksFrom leaksFrom,
        @Nullable Entered leaks,
        @Nullable Entered leaksUncertainty,
        List<StandbyMachine> standby,
        String note)
        implements Facts {

    /** Puts the machines in the order of their ids. */
    public SupplyFacts {
        standby = standby.stream()
                .sorted(Comparator.comparing(StandbyMachine::compressorId))
                .toList();
    }

    /** Whether a machine is on standby. */
    public boolean isStandby(long compressorId) {
        return standby.stream().anyMatch(machine -> machine.compressorId() == compressorId);
    }

    @Override
    public String name() {
        return site;
    }

    @Override
    public String lines() {
        return new FactLines()
                .add("working pressure", workingPressure)
                .add("reserve", reserve)
                .add("uncertainty of demand", uncertainty)
                .add("leaks from", leaksFrom)
                .add("leaks", leaks)
                .add("uncertainty of leaks", leaksUncertainty)
                .add(
                        "on standby",
                        String.join(
                                ", ", standby.stream().map(StandbyMachine::tag).toList()))
                .add("note", note)
                .toString();
    }
}
