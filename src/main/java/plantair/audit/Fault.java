package plantair.audit;

/**
 * Something that is not as it was recorded.
 *
 * @param code what is wrong
 * @param line the line of the chain that tells of it; 0 when none does
 * @param record the record, as "TEST 12"; empty for a fault of the chain itself
 */
public record Fault(Code code, long line, String record) {

    /** What is wrong. */
    public enum Code {
        /** A line does not have the digest that its text gives. */
        LINE_ALTERED,
        /** A line does not hold the digest of the one before it, or a number is left out. */
        CHAIN_BROKEN,
        /** A line is there that is no part of the chain. */
        LINE_NOT_LINKED,
        /** The chain ends elsewhere than it did: lines were taken off its end, or put there. */
        END_MOVED,
        /** A record is not as its newest line found it. */
        RECORD_ALTERED,
        /** A record that a line tells of is not there. */
        RECORD_MISSING,
        /** A record is there that no line tells of. */
        RECORD_WITHOUT_LINE,
        /** The bytes of an attached file are not those of its record. */
        BYTES_ALTERED,
        /** Bytes are there that no record tells of. */
        BYTES_WITHOUT_RECORD
    }
}
