package plantair.web;

import java.net.URI;
import java.net.URISyntaxException;
import java.time.Duration;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseCookie;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Keeps the units that a person chose in the footer. */
@Controller
final class UnitSetController {

    @PostMapping("/preferences/units")
    ResponseEntity<Void> choose(
            @RequestParam(defaultValue = "") String units, @RequestParam(defaultValue = "") String back) {
        var cookie = ResponseCookie.from(UnitSet.COOKIE, UnitSet.byName(units).name())
                .httpOnly(true)
                .sameSite("Lax")
                .path("/")
                .maxAge(Duration.ofDays(365))
                .build();
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(HttpHeaders.SET_COOKIE, cookie.toString())
                .location(ownPage(back))
                .build();
    }

    /** The address when it is a path of this very site, else the first page. */
    static URI ownPage(String back) {
        boolean path = back.startsWith("/") && !back.startsWith("//") && back.indexOf('\\') < 0;
        try {
            var uri = new URI(path ? back : "/");
            return uri.isAbsolute() || uri.getRawAuthority() != null ? URI.create("/") : uri;
        } catch (URISyntaxException unreadable) {
            return URI.create("/");
        }
    }
}
