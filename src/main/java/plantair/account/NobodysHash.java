package plantair.account;

/**
 * A hash that no known password makes, compared when a name has no account, so that such a name takes as long as another.
 * Written out and not computed: hashing a password to get one would take a tenth of the program's start.
 *
 * @param value kind, strength, then salt and digest of nothing but zeros
 */
record NobodysHash(String value) {

    private static final int SALT_AND_DIGEST_CHARACTERS = 53;
    private static final String ZERO = ".";

    /** Of the same strength, and so of the same time, as the hashes of accounts. */
    static NobodysHash ofStrength(int strength) {
        return new NobodysHash("{bcrypt}$2a$%02d$".formatted(strength) + ZERO.repeat(SALT_AND_DIGEST_CHARACTERS));
    }
}
