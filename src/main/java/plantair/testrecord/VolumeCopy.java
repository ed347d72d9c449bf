package plantair.testrecord;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.equipment.PipePiece;
import plantair.equipment.Receiver;
import plantair.equipment.VolumeKnownBy;
import plantair.pumpup.PumpUpReadings;
import plantair.pumpup.VolumePart;
import plantair.quantity.Entered;

/**
 * A receiver or pipe piece as the register had it on the day of the test.
 *
 * @param kind receiver or pipe
 * @param sourceId id in its register
 * @param label its tag
 * @param volume its volume; null for a pipe of length and bore
 * @param length of a pipe
 * @param bore of a pipe
 * @param mawp of a receiver; null when not known
 * @param knownBy how the volume of a receiver is known; null for a pipe
 */
@Embeddable
public record VolumeCopy(
        @Enumerated(EnumType.STRING) VolumePart.Kind kind,
        long sourceId,
        String label,
        @Nullable Entered volume,
        @Nullable Entered length,
        @Nullable Entered bore,
        @Nullable Entered mawp,
        @Enumerated(EnumType.STRING) @Nullable VolumeKnownBy knownBy) {

    /** A piece of which it is not known how its volume is known. */
    public VolumeCopy(
            VolumePart.Kind kind,
            long sourceId,
            String label,
            @Nullable Entered volume,
            @Nullable Entered length,
            @Nullable Entered bore,
            @Nullable Entered mawp) {
        this(kind, sourceId, label, volume, length, bore, mawp, null);
    }

    /** A receiver as it is now. */
    public static VolumeCopy of(Receiver receiver) {
        var facts = receiver.facts();
        return new VolumeCopy(
                VolumePart.Kind.RECEIVER,
                receiver.id(),
                facts.tag(),
                facts.volume(),
                null,
                null,
                facts.mawp(),
                facts.volumeKnownBy());
    }

    /** A pipe piece as it is now. */
    public static VolumeCopy of(PipePiece pipe) {
        var facts = pipe.facts();
        return new VolumeCopy(
                VolumePart.Kind.PIPE, pipe.id(), facts.tag(), facts.volume(), facts.length(), facts.bore(), null);
    }

    /** The pieces as the method takes them, each with how sure it is. */
    public static List<VolumePart> parts(List<VolumeCopy> volumes) {
        return TestReadings.volumeParts(volumes, null);
    }

    /** True when the water left inside would fill the whole volume. */
    public static boolean isDrowned(List<VolumeCopy> volumes, @Nullable Entered water) {
        return !PumpUpReadings.holdsAir(TestReadings.volumeParts(volumes, water));
    }
}
