package plantair.leaktest;

/** What became of a found leak. */
public enum StepKind {
    /** Somebody mended it. */
    REPAIRED,
    /** Somebody looked again and it is tight. */
    TIGHT,
    /** Somebody looked again and it still leaks. */
    STILL_LEAKS,
    /** It was entered by mistake, or with a wrong size: it counts no more. */
    WITHDRAWN
}
