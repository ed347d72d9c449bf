package plantair.account.http;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.http.HttpStatus;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.csrf.CsrfException;
import plantair.account.AccessRules;
import plantair.account.SignedIn;

/** Answers a signed-in person who may not: with a page, or the way to the own password first. */
final class Refusals implements AccessDeniedHandler {

    @Override
    public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException refused)
            throws IOException {
        boolean isForged = refused instanceof CsrfException;
        if (!isForged && mustChangePassword() && request.getMethod().equals("GET")) {
            response.sendRedirect(request.getContextPath() + "/account");
        } else {
            response.sendError(
                    isForged ? HttpStatus.FORBIDDEN.value() : status(request).value());
        }
    }

    /** What nobody may call is not there. */
    private static HttpStatus status(HttpServletRequest request) {
        var path = RequestPaths.of(request);
        if (AccessRules.find(request.getMethod(), path).isPresent()) {
            return HttpStatus.FORBIDDEN;
        }
        return AccessRules.methods(path).findAny().isPresent() ? HttpStatus.METHOD_NOT_ALLOWED : HttpStatus.NOT_FOUND;
    }

    private static boolean mustChangePassword() {
        var proof = SecurityContextHolder.getContext().getAuthentication();
        return proof != null && proof.getPrincipal() instanceof SignedIn person && person.mustChangePassword();
    }
}
