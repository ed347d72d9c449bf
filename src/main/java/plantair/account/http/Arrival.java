package plantair.account.http;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.authentication.SavedRequestAwareAuthenticationSuccessHandler;
import org.springframework.security.web.savedrequest.CookieRequestCache;
import plantair.account.AccountEvent.Kind;
import plantair.account.SignIn;
import plantair.account.SignedIn;

/** Writes a sign-in down and leads on to the page that was asked for. */
final class Arrival extends SavedRequestAwareAuthenticationSuccessHandler {

    private final SignIn signIn;

    Arrival(SignIn signIn) {
        this.signIn = signIn;
        setRequestCache(new CookieRequestCache());
    }

    @Override
    public void onAuthenticationSuccess(HttpServletRequest request, HttpServletResponse response, Authentication proof)
            throws ServletException, IOException {
        if (proof.getPrincipal() instanceof SignedIn person) {
            signIn.write(Kind.SIGNED_IN, person.username(), request.getRemoteAddr());
        }
        super.onAuthenticationSuccess(request, response, proof);
    }
}
