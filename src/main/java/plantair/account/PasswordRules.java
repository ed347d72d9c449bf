package plantair.account;

import com.nulabinc.zxcvbn.Zxcvbn;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/**
 * What a chosen password must keep to: long enough, short enough for bcrypt, and not easy to guess. The last is measured
 * against lists of common passwords, names and words, the person's own names, keyboard runs, dates and repeats.
 */
@Component
public final class PasswordRules {

    /** Least number of characters. */
    public static final int SHORTEST = 12;

    /** bcrypt looks at no more bytes of UTF-8. */
    public static final int MOST_BYTES = 72;

    /** The most that the measure gives: more than ten thousand million guesses. */
    private static final int LEAST_SCORE = 4;

    private static final List<String> PRODUCT =
            List.of("plant", "air", "records", "plantair", "compressor", "receiver");

    private final Zxcvbn strength = new Zxcvbn();

    /** The code of the message that says what is wrong; empty when nothing is. */
    public Optional<String> problem(String password, String username, String displayName) {
        if (password.codePointCount(0, password.length()) < SHORTEST) {
            return Optional.of("password.tooShort");
        }
        if (!fits(password)) {
            return Optional.of("password.tooLong");
        }
        List<String> own = new ArrayList<>(PRODUCT);
        own.add(username);
        own.addAll(List.of(displayName.split("\\s+")));
        own.removeIf(String::isBlank);
        boolean weak = strength.measure(password, own).getScore() < LEAST_SCORE;
        return weak ? Optional.of("password.weak") : Optional.empty();
    }

    /** Whether bcrypt would look at all of it. */
    static boolean fits(String password) {
        return password.getBytes(StandardCharsets.UTF_8).length <= MOST_BYTES;
    }
}
