package plantair.web;

import jakarta.servlet.http.HttpServletResponse;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;

/** Remembers the name that was typed last as "who", so that it need not be typed again. */
public final class PersonCookie {

    /** Name of the cookie. */
    public static final String COOKIE = "person";

    private static final int LONGEST = 200;

    private PersonCookie() {}

    /** Sends the name to the browser; nothing when it is too long for a name. */
    public static void remember(HttpServletResponse response, String name) {
        if (name.length() > LONGEST) {
            return;
        }
        var cookie = ResponseCookie.from(COOKIE, URLEncoder.encode(name.strip(), StandardCharsets.UTF_8))
                .httpOnly(true)
                .sameSite("Lax")
                .path("/")
                .maxAge(Duration.ofDays(365))
                .build();
        response.addHeader(HttpHeaders.SET_COOKIE, cookie.toString());
    }

    /** The person of a cookie's value; without a name when it cannot be read. */
    public static Person read(@Nullable String value) {
        try {
            String name = value == null ? "" : URLDecoder.decode(value, StandardCharsets.UTF_8);
            boolean sound = name.length() <= LONGEST && name.chars().noneMatch(Character::isISOControl);
            return new Person(sound ? name : "");
        } catch (IllegalArgumentException malformed) {
            return new Person("");
        }
    }
}
