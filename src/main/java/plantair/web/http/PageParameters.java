package plantair.web.http;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.MethodParameter;
import org.springframework.web.bind.support.WebDataBinderFactory;
import org.springframework.web.context.request.NativeWebRequest;
import org.springframework.web.method.support.HandlerMethodArgumentResolver;
import org.springframework.web.method.support.ModelAndViewContainer;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.springframework.web.util.WebUtils;
import plantair.web.Person;
import plantair.web.PersonCookie;
import plantair.web.UnitSet;

/** Lets a controller's method take a {@link UnitSet} and a {@link Person}. */
@Configuration(proxyBeanMethods = false)
class PageParameters implements WebMvcConfigurer {

    @Override
    public void addArgumentResolvers(List<HandlerMethodArgumentResolver> resolvers) {
        resolvers.add(new FromCookie(UnitSet.class));
        resolvers.add(new FromCookie(Person.class));
    }

    private record FromCookie(Class<?> type) implements HandlerMethodArgumentResolver {

        @Override
        public boolean supportsParameter(MethodParameter parameter) {
            return parameter.getParameterType() == type;
        }

        @Override
        public Object resolveArgument(
                MethodParameter parameter,
                @Nullable ModelAndViewContainer container,
                NativeWebRequest request,
                @Nullable WebDataBinderFactory factory) {
            var http = (HttpServletRequest) request.getNativeRequest();
            return type == UnitSet.class ? PageAdvice.units(http) : person(http);
        }

        private static Person person(HttpServletRequest request) {
            var cookie = WebUtils.getCookie(request, PersonCookie.COOKIE);
            return PersonCookie.read(cookie == null ? null : cookie.getValue());
        }
    }
}
