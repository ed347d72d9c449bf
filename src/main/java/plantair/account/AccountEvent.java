package plantair.account;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import java.time.Instant;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.NullUnmarked;

/** One sign-in, tried or done, or what else concerns the ways in. */
@Entity
@Immutable
@NullUnmarked
public class AccountEvent {

    /** What happened. */
    public enum Kind {
        /** A right password. */
        SIGNED_IN,
        /** A wrong password, a name that no account has, or an account that is switched off. */
        FAILED,
        /** Left. */
        SIGNED_OUT,
        /** Ended all own sessions. */
        SIGNED_OUT_EVERYWHERE,
        /** Chose another password. */
        PASSWORD_CHANGED,
        /** Made an address by which a calendar program reads what is due, without a password. */
        CALENDAR_MADE,
        /** Took such an address back. */
        CALENDAR_REVOKED
    }

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private Instant happenedAt;

    @Enumerated(EnumType.STRING)
    private Kind kind;

    private String username;
    private String address;

    protected AccountEvent() {}

    AccountEvent(Instant happenedAt, Kind kind, String username, String address) {
        this.happenedAt = happenedAt;
        this.kind = kind;
        this.username = username;
        this.address = address;
    }

    public Instant happenedAt() {
        return happenedAt;
    }

    public Kind kind() {
        return kind;
    }

    public String username() {
        return username;
    }

    public String address() {
        return address;
    }
}
