package plantair.wall;

/** What two readings of one place say. */
public enum WallCode {
    /** The wall lost more than the uncertainty of the loss. */
    THINNING,
    /** Whatever it lost is no more than the uncertainty of the loss. */
    NO_LOSS_TOLD,
    /** It reads thicker by more than that: steel does not grow, so one of the readings is doubtful. */
    THICKER,
    /** There is one reading only. */
    ONE_READING
}
