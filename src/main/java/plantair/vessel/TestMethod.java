package plantair.vessel;

/** How a relief valve was tested. */
public enum TestMethod {
    /** Its lever was lifted under pressure. */
    LIFT,
    /** It was opened on a test bench. */
    BENCH,
    /** A new or overhauled one took its place, with its own test. */
    REPLACED
}
