package plantair.account.http;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;
import plantair.account.AccessRules;

/**
 * Takes the cookies off whoever asks for health or figures, before anything looks for a session: the program is alive while
 * its database is away, and must be able to say so.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 3)
final class WithoutSession extends OncePerRequestFilter {

    private static final String WATCHED = "/actuator/";

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        var path = RequestPaths.of(request);
        return !path.value().startsWith(WATCHED)
                || AccessRules.find(request.getMethod(), path).isEmpty();
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        chain.doFilter(new NoCookies(request), response);
    }

    private static final class NoCookies extends HttpServletRequestWrapper {

        NoCookies(HttpServletRequest request) {
            super(request);
        }

        @Override
        public Cookie @Nullable [] getCookies() {
            return null;
        }
    }
}
