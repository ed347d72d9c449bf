package plantair.account.http;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.web.filter.OncePerRequestFilter;
import plantair.account.Access;
import plantair.account.AccessRules;
import plantair.account.Account;
import plantair.account.Accounts;
import plantair.account.SignedIn;

/**
 * Looks at the account behind a session anew with each request: a session of an account that was switched off, that
 * ended its sessions, or that began too long ago is over; another role counts at once. Tells the pages who is there.
 */
final class CurrentAccount extends OncePerRequestFilter {

    /** Request attribute: the {@link SignedIn}. */
    static final String ME = "me";

    /** Request attribute: what this person may do, as {@link May}. */
    static final String MAY = "may";

    private final Accounts accounts;
    private final Clock clock;
    private final Duration longest;

    CurrentAccount(Accounts accounts, Clock clock, Duration longest) {
        this.accounts = accounts;
        this.clock = clock;
        this.longest = longest;
    }

    /**
     * What the buttons of a page look at.
     *
     * @param record whether tests and events may be recorded
     * @param manage whether registers may be changed
     * @param administer whether accounts may be changed
     */
    public record May(boolean record, boolean manage, boolean administer) {}

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return AccessRules.find(request.getMethod(), RequestPaths.of(request))
                .filter(line -> line.access() == Access.ANYBODY)
                .isPresent();
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Authentication kept = SecurityContextHolder.getContext().getAuthentication();
        if (kept != null && kept.getPrincipal() instanceof SignedIn before) {
            Optional<SignedIn> now = accounts.findById(before.id())
                    .filter(account -> isOpen(account, before))
                    .map(account -> SignedIn.of(account, before.since()));
            now.ifPresentOrElse(person -> enter(person, kept, request), () -> leave(request));
        }
        chain.doFilter(request, response);
    }

    private boolean isOpen(Account account, SignedIn before) {
        return account.facts().enabled()
                && account.epoch() == before.epoch()
                && clock.instant().isBefore(before.since().plus(longest));
    }

    private static void enter(SignedIn person, Authentication kept, HttpServletRequest request) {
        SecurityContextHolder.setContext(new SecurityContextImpl(AccountProvider.signedIn(person, kept.getDetails())));
        request.setAttribute(ME, person);
        request.setAttribute(
                MAY, new May(person.may(Access.RECORD), person.may(Access.MANAGE), person.may(Access.ADMINISTER)));
    }

    private static void leave(HttpServletRequest request) {
        SecurityContextHolder.clearContext();
        var session = request.getSession(false);
        if (session != null) {
            session.invalidate();
        }
    }
}
