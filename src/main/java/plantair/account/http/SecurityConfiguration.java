package plantair.account.http;

import jakarta.servlet.DispatcherType;
import java.time.Clock;
import java.time.Duration;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configuration.EnableWebSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.AuthorizationFilter;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;
import org.springframework.security.web.savedrequest.CookieRequestCache;
import plantair.account.AccountEvent.Kind;
import plantair.account.Accounts;
import plantair.account.SignIn;
import plantair.account.SignedIn;

/**
 * Three doors: programs send name and password with each request and have no session; what watches the program sends the
 * token of the settings; people sign in on a page. Behind all, {@link MatrixDecision} decides. The headers of every answer are those of {@code web.http.SecurityHeaders}.
 */
@Configuration(proxyBeanMethods = false)
@EnableWebSecurity
class SecurityConfiguration {

    private static final String LOGIN = "/login";

    @Bean
    @Order(1)
    SecurityFilterChain programs(HttpSecurity http, MatrixDecision rules) {
        var refusals = new ApiRefusals();
        return withoutSession(http, rules)
                .securityMatcher("/api/**")
                .httpBasic(basic -> basic.authenticationEntryPoint(refusals))
                .exceptionHandling(
                        refused -> refused.authenticationEntryPoint(refusals).accessDeniedHandler(refusals))
                .build();
    }

    @Bean
    @Order(2)
    SecurityFilterChain figures(HttpSecurity http, MatrixDecision rules, MetricsToken token) {
        return withoutSession(http, rules)
                .securityMatcher("/actuator/prometheus")
                .exceptionHandling(refused -> refused.authenticationEntryPoint((request, response, failure) -> {
                    if (token.isSet()) {
                        response.setHeader(HttpHeaders.WWW_AUTHENTICATE, "Bearer");
                    }
                    response.setStatus(token.isSet() ? HttpStatus.UNAUTHORIZED.value() : HttpStatus.NOT_FOUND.value());
                }))
                .build();
    }

    /** For whoever proves with each request who it is; no cookie counts here. */
    private static HttpSecurity withoutSession(HttpSecurity http, MatrixDecision rules) {
        return http.authorizeHttpRequests(requests -> requests.dispatcherTypeMatchers(DispatcherType.ERROR)
                        .permitAll()
                        .anyRequest()
                        .access(rules))
                .sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .csrf(AbstractHttpConfigurer::disable)
                .headers(AbstractHttpConfigurer::disable)
                .logout(AbstractHttpConfigurer::disable)
                .requestCache(AbstractHttpConfigurer::disable);
    }

    @Bean
    MatrixDecision rules(MetricsToken token) {
        return new MatrixDecision(token);
    }

    @Bean
    @Order(3)
    SecurityFilterChain people(
            HttpSecurity http,
            MatrixDecision rules,
            Accounts accounts,
            SignIn signIn,
            Clock clock,
            @Value("${plantair.longest-session:12h}") Duration longest) {
        return http.authorizeHttpRequests(requests -> requests.dispatcherTypeMatchers(DispatcherType.ERROR)
                        .permitAll()
                        .anyRequest()
                        .access(rules))
                .addFilterBefore(new CurrentAccount(accounts, clock, longest), AuthorizationFilter.class)
                .formLogin(form -> form.loginPage(LOGIN)
                        .successHandler(new Arrival(signIn))
                        .failureUrl("/login?refused"))
                .logout(logout -> logout.logoutSuccessUrl("/login?left")
                        .addLogoutHandler((request, response, proof) -> {
                            if (proof != null && proof.getPrincipal() instanceof SignedIn person) {
                                signIn.write(Kind.SIGNED_OUT, person.username(), request.getRemoteAddr());
                            }
                        }))
                .exceptionHandling(refused -> refused.accessDeniedHandler(new Refusals()))
                .csrf(csrf -> csrf.csrfTokenRepository(tokens()))
                .requestCache(cache -> cache.requestCache(new CookieRequestCache()))
                .headers(AbstractHttpConfigurer::disable)
                .build();
    }

    /** In a cookie, so that a visitor who has not signed in needs no session. */
    private static CookieCsrfTokenRepository tokens() {
        var tokens = new CookieCsrfTokenRepository();
        tokens.setCookieName("csrf");
        tokens.setCookieCustomizer(cookie -> cookie.httpOnly(true).sameSite("Lax"));
        return tokens;
    }
}
