package plantair.account;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * The code that proves who started the application: 128 random bits, printed once, kept as a hash in memory. After a
 * wrong one the next is looked at only after a delay that doubles.
 */
@Component
public final class SetUpCode {

    private static final int BYTES = 16;
    private static final int DOUBLINGS = 6;

    private final Clock clock;
    private byte @Nullable [] hash;
    private int wrong;
    private Instant from = Instant.MIN;

    SetUpCode(Clock clock) {
        this.clock = clock;
    }

    /** Makes a new code; the one before no longer counts. */
    synchronized String make() {
        byte[] bytes = new byte[BYTES];
        new SecureRandom().nextBytes(bytes);
        String code = HexFormat.of().formatHex(bytes);
        hash = hash(code);
        return code.replaceAll("(.{4})(?=.)", "$1-");
    }

    /** Whether it is the code; blanks and hyphens do not matter. */
    public synchronized boolean matches(String typed) {
        if (hash == null || clock.instant().isBefore(from)) {
            return false;
        }
        boolean right =
                MessageDigest.isEqual(hash, hash(typed.replaceAll("[\\s-]", "").toLowerCase(Locale.ROOT)));
        if (!right) {
            wrong++;
            from = clock.instant().plus(Duration.ofSeconds(1L << Math.min(wrong, DOUBLINGS)));
        }
        return right;
    }

    /** Nobody needs it any more. */
    public synchronized void forget() {
        hash = null;
    }

    private static byte[] hash(String code) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(code.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException everyJvmHasIt) {
            throw new IllegalStateException(everyJvmHasIt);
        }
    }
}
