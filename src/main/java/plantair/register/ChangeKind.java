package plantair.register;

/** What was changed. */
public enum ChangeKind {
    /** A site. */
    SITE,
    /** A compressor. */
    COMPRESSOR,
    /** A receiver. */
    RECEIVER,
    /** A pipe piece. */
    PIPE,
    /** An instrument, or a calibration of it by superseding it. */
    INSTRUMENT,
    /** A pump-up test, by superseding it. */
    TEST,
    /** An account. */
    ACCOUNT
}
