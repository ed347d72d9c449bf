package plantair.account.http;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.http.server.PathContainer;
import org.springframework.web.util.ServletRequestPathUtils;

/** The path of a request as the controllers will see it. */
final class RequestPaths {

    private RequestPaths() {}

    static PathContainer of(HttpServletRequest request) {
        var path = ServletRequestPathUtils.hasParsedRequestPath(request)
                ? ServletRequestPathUtils.getParsedRequestPath(request)
                : ServletRequestPathUtils.parseAndCache(request);
        return path.pathWithinApplication();
    }
}
