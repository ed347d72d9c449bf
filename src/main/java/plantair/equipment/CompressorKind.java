package plantair.equipment;

/** How a machine compresses. */
public enum CompressorKind {
    /** Reciprocating piston. */
    PISTON,
    /** Rotary screw. */
    SCREW,
    /** Scroll. */
    SCROLL,
    /** Rotary vane. */
    VANE,
    /** Anything else. */
    OTHER
}
