package plantair.equipment;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Knows what forbids to pump receivers up: the module that keeps their safety records, which stands above this one. */
public interface VesselStops {

    /**
     * The stops of each receiver by its id, the gravest first; empty lists too.
     *
     * @param day the day at a receiver
     */
    Map<Long, List<VesselStop>> of(Collection<Receiver> receivers, Function<Receiver, LocalDate> day);

    /** The stops of one receiver on a day at its site. */
    default List<VesselStop> of(Receiver receiver, LocalDate day) {
        return of(List.of(receiver), one -> day).getOrDefault(receiver.id(), List.of());
    }
}
