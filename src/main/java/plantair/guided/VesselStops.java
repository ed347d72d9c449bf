package plantair.guided;

import java.time.LocalDate;
import java.util.Collection;
import plantair.equipment.Receiver;
import plantair.equipment.VesselHazard;

/** What stops a guided test before anything is pumped up. */
public final class VesselStops {

    private VesselStops() {}

    /** The hazards of a receiver on a day; none lets the test go on. */
    public static Collection<VesselHazard> of(Receiver receiver, LocalDate day) {
        return receiver.facts().hazards(day);
    }
}
