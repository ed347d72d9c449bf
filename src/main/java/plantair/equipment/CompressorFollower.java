package plantair.equipment;

/**
 * Wants to know when something recorded of a compressor changes what its history says. Told in the transaction that
 * records it, so that both are kept or neither.
 */
public interface CompressorFollower {

    /** The history of this compressor says something else now. */
    void changed(long compressorId);
}
