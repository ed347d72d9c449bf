package plantair.paper;

import java.nio.charset.StandardCharsets;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import org.springframework.web.util.UriUtils;

/** The addresses of this installation as they are printed: the one that is set, else the one by which the page was asked for. */
@Component
public class PrintedAddress {

    private final String set;

    PrintedAddress(@Value("${plantair.address:}") String set) {
        this.set = set.strip().replaceAll("/+$", "");
    }

    /** Whether a phone beside the machine cannot reach it, since it names the computer itself. */
    public boolean isLocal() {
        return base().matches("https?://(localhost|127\\.[0-9.]+|\\[::1\\])(:.*)?");
    }

    /** Of the guided test of a machine. */
    public String guided(String tag) {
        return base() + "/guided?tag=" + UriUtils.encode(tag, StandardCharsets.UTF_8);
    }

    /** Of any page. */
    public String page(String path) {
        return base() + path;
    }

    private String base() {
        return set.isEmpty()
                ? ServletUriComponentsBuilder.fromCurrentContextPath().toUriString()
                : set;
    }
}
