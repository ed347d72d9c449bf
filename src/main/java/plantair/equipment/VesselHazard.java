package plantair.equipment;

/** What forbids to pump a receiver up with somebody beside it. */
public enum VesselHazard {
    /** Damage was reported, and nobody said that it is mended. */
    DAMAGE_REPORTED,
    /** The wall is thinner somewhere than it has to be. */
    WALL_BELOW_REQUIRED,
    /** A relief valve opens above the maximum allowable working pressure. */
    RELIEF_ABOVE_MAWP,
    /** A relief valve opens above the pressure that the certificate permits. */
    RELIEF_ABOVE_PERMIT,
    /** What fills it stops above the maximum allowable working pressure. */
    CUT_OUT_ABOVE_MAWP,
    /** A relief valve failed its last test. */
    RELIEF_FAILED,
    /** A relief valve was not tested within the interval that the plant set. */
    RELIEF_OVERDUE,
    /** The certificate or permit has run out. */
    CERTIFICATE_EXPIRED,
    /** There is no certificate, and the plant says that one is required. */
    CERTIFICATE_MISSING,
    /** No maximum allowable working pressure is known. */
    MAWP_UNKNOWN,
    /** No relief valve in service is known. */
    RELIEF_UNKNOWN
}
