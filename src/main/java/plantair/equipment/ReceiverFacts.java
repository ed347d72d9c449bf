package plantair.equipment;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;
import plantair.quantity.GaugePressure;
import plantair.register.FactLines;
import plantair.register.Facts;

/**
 * What the register says of a receiver.
 *
 * @param tag how the plant calls it
 * @param volume gross volume
 * @param volumeKnownBy how that is known
 * @param mawp maximum allowable working pressure from the plate, gauge
 * @param reliefSet set pressure of the relief valve, gauge
 * @param certificateDue last day of its certificate or permit
 * @param note free text, may be empty
 * @param inService false once it is retired
 */
@Embeddable
public record ReceiverFacts(
        String tag,
        Entered volume,
        @Enumerated(EnumType.STRING) VolumeKnownBy volumeKnownBy,
        @Nullable Entered mawp,
        @Nullable Entered reliefSet,
        @Nullable LocalDate certificateDue,
        String note,
        boolean inService)
        implements Facts {

    @Override
    public String name() {
        return tag;
    }

    @Override
    public String lines() {
        return new FactLines()
                .add("tag", tag)
                .add("volume", volume)
                .add("volume known by", volumeKnownBy)
                .add("MAWP", mawp)
                .add("relief valve set pressure", reliefSet)
                .add("certificate due", certificateDue)
                .add("in service", inService)
                .add("note", note)
                .toString();
    }

    /** What speaks against standing beside this receiver while it is pumped up. */
    public Set<VesselHazard> hazards(LocalDate today) {
        Set<VesselHazard> hazards = EnumSet.noneOf(VesselHazard.class);
        if (mawp == null) {
            hazards.add(VesselHazard.MAWP_UNKNOWN);
        }
        if (reliefSet == null) {
            hazards.add(VesselHazard.RELIEF_UNKNOWN);
        }
        if (mawp != null && reliefSet != null && isAbove(reliefSet, mawp)) {
            hazards.add(VesselHazard.RELIEF_ABOVE_MAWP);
        }
        if (certificateDue != null && certificateDue.isBefore(today)) {
            hazards.add(VesselHazard.CERTIFICATE_EXPIRED);
        }
        return hazards;
    }

    private static boolean isAbove(Entered a, Entered b) {
        return GaugePressure.of(a).pascals() > GaugePressure.of(b).pascals();
    }
}
