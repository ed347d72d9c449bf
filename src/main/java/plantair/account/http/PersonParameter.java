package plantair.account.http;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.MethodParameter;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.bind.support.WebDataBinderFactory;
import org.springframework.web.context.request.NativeWebRequest;
import org.springframework.web.method.support.HandlerMethodArgumentResolver;
import org.springframework.web.method.support.ModelAndViewContainer;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import plantair.account.Access;
import plantair.account.SignedIn;
import plantair.web.Person;

/** Lets a controller's method take the signed-in {@link Person}, or the {@link SignedIn} account. */
@Configuration(proxyBeanMethods = false)
class PersonParameter implements WebMvcConfigurer {

    @Override
    public void addArgumentResolvers(List<HandlerMethodArgumentResolver> resolvers) {
        resolvers.add(new FromProof(Person.class));
        resolvers.add(new FromProof(SignedIn.class));
    }

    private record FromProof(Class<?> type) implements HandlerMethodArgumentResolver {

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
            var proof = SecurityContextHolder.getContext().getAuthentication();
            if (proof == null || !(proof.getPrincipal() instanceof SignedIn account)) {
                throw new IllegalStateException("nobody is signed in");
            }
            return type == SignedIn.class ? account : person(account);
        }

        private static Person person(SignedIn account) {
            return new Person(
                    account.displayName(), account.username(), account.role().may(Access.MANAGE));
        }
    }
}
