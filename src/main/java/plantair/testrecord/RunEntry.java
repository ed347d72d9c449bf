package plantair.testrecord;

import jakarta.persistence.Embeddable;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;

/**
 * One run as typed.
 *
 * @param startPressure gauge pressure at the start of the clock
 * @param stopPressure gauge pressure at the stop of the clock
 * @param elapsed time between them
 * @param startAir receiver air at the start
 * @param stopAir receiver air at the stop
 * @param settledPressure gauge pressure after waiting
 * @param settledAir receiver air after waiting
 * @param settledWait how long was waited
 * @param laps marks passed on the way; null when none was timed
 */
@Embeddable
public record RunEntry(
        Entered startPressure,
        Entered stopPressure,
        Entered elapsed,
        @Nullable Entered startAir,
        @Nullable Entered stopAir,
        @Nullable Entered settledPressure,
        @Nullable Entered settledAir,
        @Nullable Entered settledWait,
        @Nullable Laps laps) {

    /** A run without marks. */
    public RunEntry(
            Entered startPressure,
            Entered stopPressure,
            Entered elapsed,
            @Nullable Entered startAir,
            @Nullable Entered stopAir,
            @Nullable Entered settledPressure,
            @Nullable Entered settledAir,
            @Nullable Entered settledWait) {
        this(startPressure, stopPressure, elapsed, startAir, stopAir, settledPressure, settledAir, settledWait, null);
    }
}
