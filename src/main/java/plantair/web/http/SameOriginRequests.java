package plantair.web.http;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Keeps pages of other sites from reading or writing records through a visitor's browser, beside the tokens in forms: a
 * foreign host name (DNS rebinding) and a change sent from another site are refused, also where a program's name and
 * password count and no token does.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 2)
final class SameOriginRequests extends OncePerRequestFilter {

    private static final Set<String> OWN_HOSTS = Set.of("localhost", "127.0.0.1", "[::1]", "::1", "[0:0:0:0:0:0:0:1]");
    private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");
    private static final Set<String> OWN_SITES = Set.of("same-origin", "none");

    private final Set<String> allowedHosts;

    SameOriginRequests(@Value("${plantair.allowed-hosts:}") Set<String> allowedHosts) {
        this.allowedHosts = allowedHosts;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        boolean own =
                isOwnHost(request.getServerName()) && (READING.contains(request.getMethod()) || isFromOwnPage(request));
        if (own) {
            chain.doFilter(request, response);
        } else {
            response.sendError(HttpServletResponse.SC_FORBIDDEN);
        }
    }

    private boolean isOwnHost(String host) {
        String name = host.toLowerCase(Locale.ROOT);
        return OWN_HOSTS.contains(name) || allowedHosts.contains(name);
    }

    private static boolean isFromOwnPage(HttpServletRequest request) {
        String site = request.getHeader("Sec-Fetch-Site");
        String origin = request.getHeader("Origin");
        return (site == null || OWN_SITES.contains(site)) && (origin == null || isOwnOrigin(origin, host(request)));
    }

    private static boolean isOwnOrigin(String origin, String host) {
        return origin.equalsIgnoreCase("http://" + host) || origin.equalsIgnoreCase("https://" + host);
    }

    private static String host(HttpServletRequest request) {
        @Nullable String host = request.getHeader("Host");
        return host == null ? request.getServerName() : host;
    }
}
