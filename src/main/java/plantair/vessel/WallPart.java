package plantair.vessel;

/** Which part of a vessel a place is on; each has its own least thickness. */
public enum WallPart {
    /** The cylinder. */
    SHELL,
    /** One of the ends. */
    HEAD
}
