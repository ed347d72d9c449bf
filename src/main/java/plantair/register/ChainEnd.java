package plantair.register;

/**
 * Where the chain of changes ends.
 *
 * @param number number of its last line; 0 before the first
 * @param digest digest of its last line
 * @param begun whether the records that were there before the chain are in it
 */
public record ChainEnd(long number, String digest, boolean begun) {}
