package plantair.vessel;

import plantair.quantity.Entered;

/**
 * The lowest of the pressures above which a receiver must not be taken.
 *
 * @param pressure gauge, as typed
 * @param by what sets it
 */
public record VesselLimit(Entered pressure, By by) {

    /** What sets the limit. */
    public enum By {
        /** Its maximum allowable working pressure. */
        MAWP,
        /** What an inspector left of that. */
        INSPECTION,
        /** What its certificate permits. */
        CERTIFICATE,
        /** The set pressure of its relief valve. */
        RELIEF_VALVE
    }
}
