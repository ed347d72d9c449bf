package plantair.web.http;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.slf4j.MDC;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Gives each request a number, or takes that of a proxy: it stands in every line that the request leaves in the log, in the
 * answer, and on a page that says that something failed.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
final class RequestNumber extends OncePerRequestFilter {

    static final String HEADER = "X-Request-Id";

    /** Request attribute, and name in the log. */
    static final String NAME = "requestNumber";

    /** Letters and digits in groups, as of a UUID or a trace; nothing that could forge a line of the log. */
    private static final Pattern WELL_FORMED = Pattern.compile("[A-Za-z0-9]+([._-][A-Za-z0-9]+)*");

    private static final int SHORTEST = 8;
    private static final int LONGEST = 64;

    /** Of a UUID, short enough to be told by telephone and long enough for a log. */
    private static final int LENGTH = 13;

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String number = number(request.getHeader(HEADER));
        request.setAttribute(NAME, number);
        response.setHeader(HEADER, number);
        MDC.put(NAME, number);
        try {
            chain.doFilter(request, response);
        } finally {
            MDC.remove(NAME);
        }
    }

    private static String number(@Nullable String sent) {
        boolean taken = sent != null
                && sent.length() >= SHORTEST
                && sent.length() <= LONGEST
                && WELL_FORMED.matcher(sent).matches();
        return taken ? sent : UUID.randomUUID().toString().substring(0, LENGTH);
    }

    /** The number of a request; empty when Tomcat refused it before anything else saw it. */
    static String of(HttpServletRequest request) {
        return request.getAttribute(NAME) instanceof String number ? number : "";
    }
}
