package plantair.equipment;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;
import plantair.register.FactLines;
import plantair.register.Facts;

/**
 * What the register says of a receiver.
 *
 * @param tag how the plant calls it
 * @param volume gross volume
 * @param volumeKnownBy how that is known
 * @param mawp maximum allowable working pressure from the plate, gauge
 * @param reliefSet set pressure of the relief valve, gauge; counts only while no valve of it is registered
 * @param certificateDue last day of its certificate or permit; counts only while no certificate of it is registered
 * @param cutOut highest pressure at which what fills it stops, gauge
 * @param certificateRequired whether the plant says that it needs a certificate; null when nothing is said
 * @param shellRequired least thickness that its shell needs
 * @param headRequired least thickness that its heads need
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
        @Nullable Entered cutOut,
        @Nullable Boolean certificateRequired,
        @Nullable Entered shellRequired,
        @Nullable Entered headRequired,
        String note,
        boolean inService)
        implements Facts {

    /** A receiver of which no more is known than its plate, its relief valve and its certificate. */
    public ReceiverFacts(
            String tag,
            Entered volume,
            VolumeKnownBy volumeKnownBy,
            @Nullable Entered mawp,
            @Nullable Entered reliefSet,
            @Nullable LocalDate certificateDue,
            String note,
            boolean inService) {
        this(tag, volume, volumeKnownBy, mawp, reliefSet, certificateDue, null, null, null, null, note, inService);
    }

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
                .add("cut-out", cutOut)
                .add("certificate required", certificateRequired)
                .add("shell needs", shellRequired)
                .add("heads need", headRequired)
                .add("in service", inService)
                .add("note", note)
                .toString();
    }
}
