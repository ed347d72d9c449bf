package plantair.web.http;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.MessageSource;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.util.DisconnectedClientHelper;
import plantair.web.Unworded;

/**
 * Answers for the filters that read sessions and accounts from the database, before any page can be made: when it is away,
 * a line of text and 503. What was sent is still in the browser. Whatever else fails outside a controller is logged here.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 1)
final class AwayAnswer extends OncePerRequestFilter {

    private static final Logger LOG = LoggerFactory.getLogger(AwayAnswer.class);

    private final MessageSource messages;

    AwayAnswer(MessageSource messages) {
        this.messages = messages;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        try {
            chain.doFilter(request, response);
        } catch (IOException | RuntimeException | ServletException failure) {
            if (response.isCommitted() || !DatabaseAway.isCauseOf(failure)) {
                log(failure);
                throw failure;
            }
            LOG.error("The database cannot be reached", Unworded.of(failure));
            response.reset();
            response.setHeader(RequestNumber.HEADER, RequestNumber.of(request));
            response.setStatus(HttpStatus.SERVICE_UNAVAILABLE.value());
            response.setContentType("text/plain");
            response.setCharacterEncoding(StandardCharsets.UTF_8.name());
            response.getWriter().println(messages.getMessage("error.503.title", null, request.getLocale()));
            response.getWriter().println(messages.getMessage("error.503.text", null, request.getLocale()));
            response.getWriter()
                    .println(messages.getMessage(
                            "error.number", new Object[] {RequestNumber.of(request)}, request.getLocale()));
        }
    }

    /** Tomcat is silent about failures, since it would say their words. */
    private static void log(Exception failure) {
        boolean ofTheCaller = failure instanceof InvalidParameterException
                || DisconnectedClientHelper.isClientDisconnectedException(failure);
        if (!ofTheCaller) {
            LOG.error("A request failed", Unworded.of(failure));
        }
    }
}
