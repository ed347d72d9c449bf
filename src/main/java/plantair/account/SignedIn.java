package plantair.account;

import java.io.Serializable;
import java.time.Instant;
import org.springframework.security.core.AuthenticatedPrincipal;

/**
 * The account behind a request, as it is kept in a session.
 *
 * @param id of the account
 * @param username what was typed to sign in
 * @param displayName name of the person
 * @param role what the person may do
 * @param epoch of the account when it signed in
 * @param mustChangePassword whether nothing else may be done before
 * @param since when it signed in
 */
public record SignedIn(
        long id, String username, String displayName, Role role, int epoch, boolean mustChangePassword, Instant since)
        implements AuthenticatedPrincipal, Serializable {

    /** The account as it is now. */
    public static SignedIn of(Account account, Instant since) {
        var facts = account.facts();
        return new SignedIn(
                account.id(),
                facts.username(),
                facts.displayName(),
                facts.role(),
                account.epoch(),
                account.mustChangePassword(),
                since);
    }

    @Override
    public String getName() {
        return username;
    }

    public boolean may(Access access) {
        return role.may(access);
    }
}
