package plantair.account.http;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;

/** The secret by which a program reads the figures of operation; without one in the settings nobody does. */
@Component
final class MetricsToken {

    private static final int SHORTEST = 20;
    private static final String SCHEME = "Bearer ";

    private final String token;

    MetricsToken(@Value("${plantair.metrics.token:}") String token) {
        if (!token.isEmpty() && token.length() < SHORTEST) {
            throw new IllegalStateException("plantair.metrics.token: at least " + SHORTEST + " characters");
        }
        this.token = token;
    }

    boolean isSet() {
        return !token.isEmpty();
    }

    /** Takes as long whatever was sent. */
    boolean isShownBy(HttpServletRequest request) {
        String sent = request.getHeader(HttpHeaders.AUTHORIZATION);
        return isSet() && sent != null && MessageDigest.isEqual(bytes(SCHEME + token), bytes(sent));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
