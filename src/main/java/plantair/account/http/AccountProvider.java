package plantair.account.http;

import java.time.Clock;
import java.util.List;
import org.springframework.security.authentication.AuthenticationProvider;
import org.springframework.security.authentication.BadCredentialsException;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.web.authentication.WebAuthenticationDetails;
import org.springframework.stereotype.Component;
import plantair.account.SignIn;
import plantair.account.SignedIn;

/** Signs in by name and password. */
@Component
final class AccountProvider implements AuthenticationProvider {

    private final SignIn signIn;
    private final Clock clock;

    AccountProvider(SignIn signIn, Clock clock) {
        this.signIn = signIn;
        this.clock = clock;
    }

    @Override
    public Authentication authenticate(Authentication tried) {
        String address = tried.getDetails() instanceof WebAuthenticationDetails details
                ? String.valueOf(details.getRemoteAddress())
                : "";
        return signIn.check(tried.getName(), String.valueOf(tried.getCredentials()), address)
                .map(account -> signedIn(SignedIn.of(account, clock.instant()), tried.getDetails()))
                .orElseThrow(() -> new BadCredentialsException("refused"));
    }

    @Override
    public boolean supports(Class<?> type) {
        return UsernamePasswordAuthenticationToken.class.isAssignableFrom(type);
    }

    /** The proof that goes into a session. */
    static Authentication signedIn(SignedIn person, Object details) {
        var role = new SimpleGrantedAuthority("ROLE_" + person.role());
        var proof = UsernamePasswordAuthenticationToken.authenticated(person, null, List.of(role));
        proof.setDetails(details);
        return proof;
    }
}
