package plantair.account.web;

import java.util.Locale;
import java.util.Optional;
import org.springframework.validation.Errors;
import plantair.account.Usernames;
import plantair.web.FieldChecks;

/** Reads the names of an account. */
final class AccountReader {

    private static final int LONGEST_NAME = 70;

    private AccountReader() {}

    /** A name to sign in with, in small letters. */
    static Optional<String> username(String typed, Errors errors) {
        String username = typed.strip().toLowerCase(Locale.ROOT);
        if (Usernames.isSound(username)) {
            return Optional.of(username);
        }
        errors.rejectValue("username", "account.username.unsound");
        return Optional.empty();
    }

    /** The person's own name. */
    static Optional<String> displayName(String typed, Errors errors) {
        return new FieldChecks(errors).text("displayName", typed, LONGEST_NAME, true);
    }
}
