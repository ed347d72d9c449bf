package plantair.equipment;

/** How the volume of a receiver is known. */
public enum VolumeKnownBy {
    /** From its plate. */
    PLATE,
    /** From the maker's data sheet. */
    MAKER_SHEET,
    /** From its dimensions. */
    DIMENSIONS,
    /** By filling it with water. */
    WATER_FILL,
    /** Guessed. */
    GUESS
}
