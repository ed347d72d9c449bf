package plantair.account;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Optional;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import plantair.account.AccountEvent.Kind;

/** Compares a name and a password with the accounts, and writes down what came of it. */
@Component
public class SignIn {

    private static final int DIGEST_CHARACTERS = 16;

    private final Accounts accounts;
    private final AccountEvents events;
    private final SignInDelay delay;
    private final PasswordEncoder passwords;
    private final Clock clock;
    private final NobodysHash nobodysHash;

    SignIn(
            Accounts accounts,
            AccountEvents events,
            SignInDelay delay,
            PasswordEncoder passwords,
            NobodysHash nobodysHash,
            Clock clock) {
        this.accounts = accounts;
        this.events = events;
        this.delay = delay;
        this.passwords = passwords;
        this.clock = clock;
        this.nobodysHash = nobodysHash;
    }

    /**
     * The account that this password opens. The delay is looked at before and after the slow comparison, so that many
     * tries at once gain nothing; a name without an account takes as long as one with it.
     */
    public Optional<Account> check(String typedName, String password, String address) {
        String username = typedName.strip().toLowerCase(Locale.ROOT);
        Optional<Account> account = accounts.findByFactsUsername(username);
        String key = account.isPresent() ? username : digest(username);
        if (delay.holds(key, address)) {
            return Optional.empty();
        }
        String hash = account.map(Account::passwordHash).orElse(nobodysHash.value());
        boolean right = PasswordRules.fits(password) && passwords.matches(password, hash);
        if (right && !delay.holds(key, address)) {
            Optional<Account> open = account.filter(known -> known.facts().enabled());
            if (open.isPresent()) {
                return open;
            }
        }
        write(Kind.FAILED, key, address);
        return Optional.empty();
    }

    /** Writes down what an account did. */
    public void write(Kind kind, String username, String address) {
        events.save(new AccountEvent(clock.instant(), kind, username, address));
    }

    private static String digest(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return "unknown " + HexFormat.of().formatHex(digest).substring(0, DIGEST_CHARACTERS);
        } catch (NoSuchAlgorithmException everyJvmHasIt) {
            throw new IllegalStateException(everyJvmHasIt);
        }
    }
}
