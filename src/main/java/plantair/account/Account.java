package plantair.account;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import org.jspecify.annotations.NullUnmarked;
import plantair.register.Registered;

/** Somebody who may sign in. */
@Entity
@NullUnmarked
public class Account implements Registered<AccountFacts> {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    @Embedded
    private AccountFacts facts;

    private String passwordHash;
    private boolean mustChangePassword;
    private int epoch;

    @Version
    private int version;

    protected Account() {}

    /**
     * A new account.
     *
     * @param facts what is said of it
     * @param passwordHash of its first password
     * @param mustChangePassword whether that password is for one sign-in only
     */
    Account(AccountFacts facts, String passwordHash, boolean mustChangePassword) {
        this.facts = facts;
        this.passwordHash = passwordHash;
        this.mustChangePassword = mustChangePassword;
    }

    @Override
    public long id() {
        return id;
    }

    @Override
    public int version() {
        return version;
    }

    @Override
    public AccountFacts facts() {
        return facts;
    }

    @Override
    public void revise(AccountFacts newFacts) {
        facts = newFacts;
    }

    String passwordHash() {
        return passwordHash;
    }

    public boolean mustChangePassword() {
        return mustChangePassword;
    }

    /** Counts how often all sessions were ended. */
    public int epoch() {
        return epoch;
    }

    /** Takes another password; all sessions are over. */
    void renewPassword(String hash, boolean mustChange) {
        passwordHash = hash;
        mustChangePassword = mustChange;
        endSessions();
    }

    void endSessions() {
        epoch++;
    }
}
