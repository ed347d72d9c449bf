package plantair.vessel;

/** What kind of look it was. */
public enum InspectionKind {
    /** From outside. */
    EXTERNAL,
    /** From inside. */
    INTERNAL,
    /** Wall thickness measured. */
    THICKNESS,
    /** Pressure test with water. */
    HYDROSTATIC
}
