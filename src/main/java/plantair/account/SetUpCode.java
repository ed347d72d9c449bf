package plantair.account;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * The code that proves who started the application: 128 random bits, printed once, kept as a hash. Each instance prints one
 * at its start, and each takes those of all for a week. After a wrong one the next is looked at only after a delay that
 * doubles, whichever instance is asked.
 */
@Component
public class SetUpCode {

    private static final int BYTES = 16;
    private static final int DOUBLINGS = 6;
    private static final Duration GOOD_FOR = Duration.ofDays(7);

    private final JdbcTemplate jdbc;
    private final Clock clock;

    SetUpCode(JdbcTemplate jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** Makes another code. */
    @Transactional
    public String make() {
        byte[] bytes = new byte[BYTES];
        new SecureRandom().nextBytes(bytes);
        String code = HexFormat.of().formatHex(bytes);
        OffsetDateTime now = now();
        jdbc.update("delete from set_up_code where made_at < ?", now.minus(GOOD_FOR));
        jdbc.update(
                "insert into set_up_code (hash, made_at, wrong, held_until) values (?, ?, 0, ?)", hash(code), now, now);
        return code.replaceAll("(.{4})(?=.)", "$1-");
    }

    /** A code as it is kept. */
    private record Kept(String hash, int wrong, Instant heldUntil) {}

    /** Whether it is one of the codes; blanks and hyphens do not matter. */
    @Transactional
    public boolean matches(String typed) {
        List<Kept> codes = jdbc.query(
                "select hash, wrong, held_until from set_up_code where made_at >= ? order by hash for update",
                (row, number) -> new Kept(
                        row.getString(1),
                        row.getInt(2),
                        row.getObject(3, OffsetDateTime.class).toInstant()),
                now().minus(GOOD_FOR));
        Instant now = clock.instant();
        if (codes.stream().anyMatch(code -> now.isBefore(code.heldUntil))) {
            return false;
        }
        String hash = hash(typed.replaceAll("[\\s-]", "").toLowerCase(Locale.ROOT));
        boolean right = codes.stream().anyMatch(code -> code.hash.equals(hash));
        if (!right) {
            int wrong = 1 + codes.stream().mapToInt(Kept::wrong).max().orElse(0);
            jdbc.update(
                    "update set_up_code set wrong = ?, held_until = ?",
                    wrong,
                    now().plusSeconds(1L << Math.min(wrong, DOUBLINGS)));
        }
        return right;
    }

    /** Nobody needs one any more. */
    public void forget() {
        jdbc.update("delete from set_up_code");
    }

    private OffsetDateTime now() {
        return clock.instant().atOffset(ZoneOffset.UTC);
    }

    private static String hash(String code) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(code.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException everyJvmHasIt) {
            throw new IllegalStateException(everyJvmHasIt);
        }
    }
}
