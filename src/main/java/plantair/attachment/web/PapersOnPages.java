package plantair.attachment.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.HandlerMapping;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import plantair.attachment.AttachedFiles;
import plantair.attachment.AttachedTo;

/** Gives each page of a record its photos and papers, so that no controller of theirs need know of them. */
@Component
final class PapersOnPages implements HandlerInterceptor, WebMvcConfigurer {

    private static final String ATTRIBUTE = "papers";

    private final AttachedFiles files;

    PapersOnPages(AttachedFiles files) {
        this.files = files;
    }

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(this);
    }

    @Override
    public void postHandle(
            HttpServletRequest request, HttpServletResponse response, Object handler, @Nullable ModelAndView page) {
        Object pattern = request.getAttribute(HandlerMapping.BEST_MATCHING_PATTERN_ATTRIBUTE);
        Optional<AttachedTo> kind = AttachedTo.shownBy(String.valueOf(pattern));
        String view = page == null ? null : page.getViewName();
        if (page != null && view != null && !view.startsWith("redirect:") && kind.isPresent()) {
            long id = Long.parseLong(String.valueOf(variables(request).get("id")));
            page.addObject(ATTRIBUTE, new PapersView(kind.get(), id, files.of(kind.get(), id)));
        }
    }

    private static Map<?, ?> variables(HttpServletRequest request) {
        return request.getAttribute(HandlerMapping.URI_TEMPLATE_VARIABLES_ATTRIBUTE) instanceof Map<?, ?> map
                ? map
                : Map.of();
    }
}
