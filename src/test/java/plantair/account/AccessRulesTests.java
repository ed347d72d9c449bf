package plantair.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.anonymous;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;

import java.io.IOException;
import java.io.UnsupportedEncodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.http.HttpMethod;
import org.springframework.http.server.PathContainer;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.RequestBuilder;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.request.MockMvcRequestBuilders;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.People;
import plantair.testing.Plant;

/** Every address against the written rules, for every role and for nobody. */
@OnH2
final class AccessRulesTests {

    /** Mapped by libraries and open to nobody: an error is shown by dispatch alone, and one description is enough. */
    private static final Set<String> CLOSED = Set.of("/error", "/api/v1/openapi.json.yaml");

    /** Not mapped to a controller's method: files, the filter chain's own addresses. */
    private static final Set<String> NOT_MAPPED = Set.of(
            "/css/**",
            "/js/**",
            "/vendor/**",
            "/webjars/**",
            "/favicon.svg",
            "/logout",
            "/actuator/health",
            "/actuator/health/liveness",
            "/actuator/health/readiness",
            "/actuator/prometheus");

    @Autowired
    private ApplicationContext context;

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @AfterEach
    void letInPeople() {
        database.letInPeople();
    }

    @BeforeEach
    void startEmpty() {
        database.wipe();
    }

    /** One way to call the program. */
    private record Call(String method, String pattern) {

        /** An address of this pattern where no record stands. */
        String address() {
            return pattern.replaceAll("\\{[^/]+\\}", "999999");
        }

        Access access() {
            return AccessRules.find(method, PathContainer.parsePath(address()))
                    .orElseThrow(() -> new AssertionError("no line for " + this))
                    .access();
        }
    }

    /** All of them; last the one after which nobody is signed in any more. */
    private List<Call> calls() {
        List<Call> calls = new ArrayList<>();
        context.getBeansOfType(RequestMappingHandlerMapping.class).values().stream()
                .flatMap(mapping -> mapping.getHandlerMethods().keySet().stream())
                .forEach(info -> calls.addAll(calls(info)));
        return calls.stream()
                .filter(call -> !CLOSED.contains(call.pattern()))
                .distinct()
                .sorted(Comparator.comparing(call -> call.pattern().endsWith("sign-out-everywhere")))
                .toList();
    }

    private static List<Call> calls(RequestMappingInfo info) {
        Set<RequestMethod> methods = info.getMethodsCondition().getMethods();
        Stream<RequestMethod> called = methods.isEmpty() ? Arrays.stream(RequestMethod.values()) : methods.stream();
        return called.filter(method -> method != RequestMethod.TRACE) // Tomcat answers it
                .flatMap(method ->
                        info.getPatternValues().stream().map(pattern -> new Call(method.name(), plain(pattern))))
                .toList();
    }

    /** The pattern without the expressions that narrow it. */
    private static String plain(String pattern) {
        return pattern.replaceAll(":([^{}]|\\{[^}]*\\})+\\}", "}");
    }

    @Test
    void hasALineOfItsOwnForEveryHandler() {
        assertThat(calls())
                .hasSizeGreaterThan(60)
                .allSatisfy(call -> assertThat(AccessRules.find(call.method(), PathContainer.parsePath(call.address()))
                                .orElseThrow()
                                .path()
                                .getPatternString())
                        .as(call.toString())
                        .isEqualTo(call.pattern()));
    }

    @Test
    void hasNoLineWithoutAHandler() {
        Set<String> mapped = calls().stream().map(Call::pattern).collect(Collectors.toSet());

        assertThat(AccessRules.LINES)
                .extracting(line -> line.path().getPatternString())
                .allSatisfy(pattern -> assertThat(mapped.contains(pattern) || NOT_MAPPED.contains(pattern))
                        .as(pattern)
                        .isTrue());
    }

    @ParameterizedTest
    @EnumSource
    void letsEachRoleDoWhatItsLinesSayAndNoMore(Role role) {
        var who = authentication(People.proof(People.of(role)));

        for (Call call : calls()) {
            int status = status(call, who);
            boolean refused = status == 403 || status == 401;
            assertThat(refused).as("%s %s: %d", role, call, status).isEqualTo(!role.may(call.access()));
        }
    }

    @Test
    void sendsEverybodyElseToSignIn() {
        for (Call call : calls()) {
            var answer = site.perform(request(call, anonymous()));
            if (call.pattern().startsWith("/api/")) {
                assertThat(answer).as(call.toString()).hasStatus(401);
            } else if (call.access() != Access.ANYBODY) {
                assertThat(answer).as(call.toString()).hasStatus(302);
                assertThat(answer.getResponse().getRedirectedUrl()).endsWith("/login");
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void hidesWhatStandsInNoLine(Role role) {
        var who = authentication(People.proof(People.of(role)));

        for (String path : List.of(
                "/error",
                "/nowhere",
                "/actuator",
                "/actuator/env",
                "/actuator/beans",
                "/actuator/sbom",
                "/h2-console")) {
            assertThat(status(new Call("GET", path), who)).as(path).isEqualTo(404);
        }
        assertThat(status(new Call("DELETE", "/sites/1"), who)).isEqualTo(405);
    }

    /** No page offers a link or a form that would be refused to the person who sees it. */
    @ParameterizedTest
    @EnumSource
    void offersNothingThatItRefuses(Role role) {
        var plant = Plant.in(context);
        var works = plant.site();
        var machine = plant.compressor(works);
        plant.receiver(works);
        var gauge = plant.gauge("G-1");
        plant.test(machine, "2026-01-05T14:00:00Z", "60.2", "60.8", "60.5");
        plant.restate(gauge, LocalDate.of(2026, 2, 1), "K-1");
        List<String> seen = new ArrayList<>(List.of("/"));

        for (int i = 0; i < seen.size() && i < 200; i++) {
            String path = seen.get(i);
            var answer = site.perform(request(new Call("GET", path), authentication(People.proof(People.of(role)))));
            assertThat(answer.getResponse().getStatus())
                    .as("%s at %s", role, path)
                    .isIn(200, 302);
            var page = Jsoup.parse(text(answer.getResponse()));
            for (String link : page.select("a[href^=/]").eachAttr("href")) {
                String target = link.replaceFirst("[?#].*", "");
                if (!seen.contains(target)) {
                    seen.add(target);
                }
            }
            for (var form : page.select("form[method=post]")) {
                var call = new Call("POST", form.attr("action"));
                assertThat(role.may(call.access()))
                        .as("%s at %s sees %s", role, path, call)
                        .isTrue();
            }
        }

        assertThat(seen)
                .contains("/tests/1", "/sites/1", "/compressors/1", "/receivers/1", "/instruments/1", "/changes");
        assertThat(seen.contains("/sites/new")).isEqualTo(role.may(Access.MANAGE));
        assertThat(seen.contains("/compressors/1/tests/new")).isEqualTo(role.may(Access.RECORD));
        assertThat(seen.contains("/accounts")).isEqualTo(role.may(Access.ADMINISTER));
    }

    @Test
    void standsInTheDocument() throws IOException {
        assertThat(Files.readString(Path.of("docs/security.md"))).contains(table());
    }

    private static String table() {
        String head = "| method | address | administrator | manager | technician | auditor | nobody |\n"
                + "|---|---|---|---|---|---|---|\n";
        return head
                + AccessRules.LINES.stream()
                        .map(line -> "| %s | `%s` | %s | %s |%n"
                                .formatted(
                                        line.method(),
                                        line.path().getPatternString(),
                                        Arrays.stream(Role.values())
                                                .map(role -> role.may(line.access()) ? "yes" : "–")
                                                .collect(Collectors.joining(" | ")),
                                        line.access() == Access.ANYBODY ? "yes" : "–"))
                        .collect(Collectors.joining());
    }

    private int status(Call call, RequestPostProcessor who) {
        return site.perform(request(call, who)).getResponse().getStatus();
    }

    private static RequestBuilder request(Call call, RequestPostProcessor who) {
        return MockMvcRequestBuilders.request(HttpMethod.valueOf(call.method()), call.address())
                .with(who);
    }

    private static String text(MockHttpServletResponse response) {
        try {
            return response.getContentAsString();
        } catch (UnsupportedEncodingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
