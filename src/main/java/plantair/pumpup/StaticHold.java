package plantair.pumpup;

import plantair.quantity.Elapsed;
import plantair.quantity.GaugePressure;

/**
 * The pressure of the shut volume watched with the machine stopped, before the runs (M10).
 *
 * @param start pressure at first
 * @param end pressure at last; above start when something feeds in
 * @param waited time between them
 * @param place where the air goes
 */
public record StaticHold(GaugePressure start, GaugePressure end, Elapsed waited, Place place) {

    /** Where the air of a falling pressure goes. */
    public enum Place {
        /** Out of the test volume: through the shut valve, a drain, a joint. It is lost in the runs as well. */
        TEST_VOLUME,
        /** Back through the machine's own check valve: only while it stands, so never added to a run. */
        CHECK_VALVE
    }
}
