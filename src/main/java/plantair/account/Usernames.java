package plantair.account;

import java.util.regex.Pattern;

/** What a name to sign in with looks like. */
public final class Usernames {

    static final String RULE = "2 to 40 characters of a-z, 0-9, dot, hyphen and underscore, beginning with a letter";

    private static final Pattern SOUND = Pattern.compile("[a-z][a-z0-9._-]{1,39}");

    private Usernames() {}

    public static boolean isSound(String username) {
        return SOUND.matcher(username).matches();
    }
}
