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
    /** A maintenance event, by correcting or withdrawing it; told of its compressor. */
    EVENT,
    /** The baseline of a compressor; told of the compressor. */
    BASELINE,
    /** The limits at which the plant wants to act. */
    LIMITS,
    /** An account. */
    ACCOUNT
}
