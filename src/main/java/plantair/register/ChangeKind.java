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
    /** A pump-up test, by superseding it. */
    TEST
}
