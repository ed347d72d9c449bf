package plantair.leaktest;

import jakarta.persistence.Embeddable;
import org.jspecify.annotations.Nullable;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Entered;

/**
 * In which state a leak was measured, and what was copied of the site on that day.
 *
 * @param usersOff whether nobody used air
 * @param drainsOff whether timed drains and the purge of dryers were shut, so that they do not count as leaks
 * @param atPressure gauge pressure for which the leak is told
 * @param siteElevation copied from the site
 * @param siteBarometer copied from the site
 * @param barometer read in the test; null when not read
 * @param volume typed in place of receivers and pipes; null else
 * @param volumePercent how far that may be off, 95 %; null else
 * @param division smallest step of the gauge that could be read; null for load times
 * @param leaveEarly whether the first five minutes of a fall are left out
 */
@Embeddable
public record LeakState(
        boolean usersOff,
        boolean drainsOff,
        Entered atPressure,
        @Nullable Entered siteElevation,
        @Nullable Entered siteBarometer,
        @Nullable Entered barometer,
        @Nullable Entered volume,
        @Nullable Entered volumePercent,
        @Nullable Entered division,
        boolean leaveEarly) {

    /** The station pressure: from the barometer read, or what the site says (M3). */
    public AbsolutePressure stationPressure() {
        return LeakReadings.station(this).pressure();
    }
}
