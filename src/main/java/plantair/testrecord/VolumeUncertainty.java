package plantair.testrecord;

import org.jspecify.annotations.Nullable;
import plantair.equipment.VolumeKnownBy;
import plantair.pumpup.VolumePart;

/** How sure a volume is by how it is known. Our own defaults, docs/method.md, M20. */
final class VolumeUncertainty {

    private VolumeUncertainty() {}

    /** Relative standard uncertainty. */
    static double of(@Nullable VolumeKnownBy knownBy) {
        if (knownBy == null) {
            return VolumePart.PLATE_U;
        }
        return switch (knownBy) {
            case WATER_FILL -> VolumePart.WATER_FILL_U;
            case PLATE, MAKER_SHEET, DIMENSIONS -> VolumePart.PLATE_U;
            case GUESS -> VolumePart.GUESS_U;
        };
    }
}
