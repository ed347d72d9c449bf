package plantair.account.http;

import jakarta.servlet.http.HttpServletRequest;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authorization.AuthorizationDecision;
import org.springframework.security.authorization.AuthorizationManager;
import org.springframework.security.authorization.AuthorizationResult;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.access.intercept.RequestAuthorizationContext;
import plantair.account.Access;
import plantair.account.AccessRules;
import plantair.account.SignedIn;

/** Decides each request by {@link AccessRules}; what stands there in no line is refused. */
final class MatrixDecision implements AuthorizationManager<RequestAuthorizationContext> {

    private final MetricsToken metricsToken;

    MatrixDecision(MetricsToken metricsToken) {
        this.metricsToken = metricsToken;
    }

    @Override
    public AuthorizationResult authorize(
            Supplier<? extends @Nullable Authentication> who, RequestAuthorizationContext context) {
        var request = context.getRequest();
        boolean granted = AccessRules.find(request.getMethod(), RequestPaths.of(request))
                .map(line -> isGranted(line.access(), who, request))
                .orElse(false);
        return new AuthorizationDecision(granted);
    }

    private boolean isGranted(
            Access access, Supplier<? extends @Nullable Authentication> who, HttpServletRequest request) {
        if (access == Access.ANYBODY) {
            return true;
        }
        if (access == Access.METRICS_TOKEN) {
            return metricsToken.isShownBy(request);
        }
        Authentication authentication = who.get();
        return authentication != null
                && authentication.getPrincipal() instanceof SignedIn person
                && (access == Access.OWN_PASSWORD || !person.mustChangePassword())
                && person.may(access);
    }
}
