package plantair.web.http;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.ui.Model;
import org.springframework.web.bind.WebDataBinder;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.InitBinder;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.util.WebUtils;
import plantair.web.UnitSet;

/** What layout.html needs on every page, and how every form is bound. */
@ControllerAdvice
final class PageAdvice {

    private static final int MOST_ROWS = 100;

    private final boolean demo;

    PageAdvice(@Value("${plantair.demo:false}") boolean demo) {
        this.demo = demo;
    }

    @ModelAttribute
    void addTo(Model model, HttpServletRequest request) {
        model.addAllAttributes(attributes(request));
    }

    /** The same for a page that no controller made. */
    Map<String, Object> attributes(HttpServletRequest request) {
        return Map.of(
                "units", units(request),
                "unitSets", List.of(UnitSet.values()),
                "demo", demo,
                "path", request.getRequestURI(),
                "back", back(request));
    }

    static UnitSet units(HttpServletRequest request) {
        var cookie = WebUtils.getCookie(request, UnitSet.COOKIE);
        return UnitSet.byName(cookie == null ? null : cookie.getValue());
    }

    /** Where the units switch returns to; empty on an answer to a form, which cannot be asked for again. */
    private static String back(HttpServletRequest request) {
        @Nullable String query = request.getQueryString();
        boolean repeatable = request.getMethod().equals("GET");
        return repeatable ? request.getRequestURI() + (query == null ? "" : "?" + query) : "";
    }

    /** No marker fields: a form bean's text is never set to null. Rows beyond the limit answer 400. */
    @InitBinder
    void plainFields(WebDataBinder binder) {
        binder.setFieldMarkerPrefix(null);
        binder.setFieldDefaultPrefix(null);
        binder.setAutoGrowCollectionLimit(MOST_ROWS);
    }
}
