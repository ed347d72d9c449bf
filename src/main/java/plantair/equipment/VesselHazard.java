package plantair.equipment;

/** What speaks against standing beside a receiver while it is pumped up. */
public enum VesselHazard {
    /** The relief valve opens above the maximum allowable working pressure. */
    RELIEF_ABOVE_MAWP,
    /** The certificate or permit has run out. */
    CERTIFICATE_EXPIRED,
    /** No maximum allowable working pressure is known. */
    MAWP_UNKNOWN,
    /** No relief valve set pressure is known. */
    RELIEF_UNKNOWN
}
