package plantair.account;

import java.security.SecureRandom;
import java.util.stream.Collectors;

/** Passwords made by chance: 20 characters of 30, near 98 bits, none that looks like another. */
final class OneTimePassword {

    private static final String CHARACTERS = "abcdefghjkmnpqrstuvwxyz2345679";
    private static final int LENGTH = 20;
    private static final int GROUP = 5;
    private static final SecureRandom RANDOM = new SecureRandom();

    private OneTimePassword() {}

    static String make() {
        String all = RANDOM.ints(LENGTH, 0, CHARACTERS.length())
                .mapToObj(index -> CHARACTERS.substring(index, index + 1))
                .collect(Collectors.joining());
        return all.replaceAll("(.{" + GROUP + "})(?=.)", "$1-");
    }
}
