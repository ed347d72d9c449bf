package plantair.web.http;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.springframework.context.MessageSource;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/** Answers when a filter cannot read a form, as one with a file larger than any may be, before a page can be made: a line of text. */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 1)
final class UnreadableFormAnswer extends OncePerRequestFilter {

    private static final int TOO_LARGE = 413;

    private final MessageSource messages;

    UnreadableFormAnswer(MessageSource messages) {
        this.messages = messages;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        try {
            chain.doFilter(request, response);
        } catch (InvalidParameterException failure) {
            if (response.isCommitted() || failure.getErrorCode() != TOO_LARGE) {
                throw failure;
            }
            response.resetBuffer();
            response.setStatus(TOO_LARGE);
            response.setContentType("text/plain");
            response.setCharacterEncoding(StandardCharsets.UTF_8.name());
            response.getWriter().println(messages.getMessage("error.413.title", null, request.getLocale()));
            response.getWriter().println(messages.getMessage("error.413.text", null, request.getLocale()));
        }
    }
}
