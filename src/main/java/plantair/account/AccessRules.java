package plantair.account;

import static plantair.account.Access.ADMINISTER;
import static plantair.account.Access.ANYBODY;
import static plantair.account.Access.MANAGE;
import static plantair.account.Access.METRICS_TOKEN;
import static plantair.account.Access.OWN_PASSWORD;
import static plantair.account.Access.READ;
import static plantair.account.Access.RECORD;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.http.server.PathContainer;
import org.springframework.web.util.pattern.PathPattern;
import org.springframework.web.util.pattern.PathPatternParser;

/**
 * Who may call what: the only place that says so. The first line that matches counts; what no line matches is refused.
 * docs/security.md shows the same table.
 */
public final class AccessRules {

    private static final String GET = "GET";
    private static final String POST = "POST";

    /** Stands for every method. */
    private static final String ANY = "any";

    /** All lines, in the order they are looked at. */
    public static final List<Line> LINES = List.of(
            line(GET, "/css/**", ANYBODY),
            line(GET, "/js/**", ANYBODY),
            line(GET, "/vendor/**", ANYBODY),
            line(GET, "/webjars/**", ANYBODY),
            line(GET, "/favicon.svg", ANYBODY),
            line(GET, "/actuator/health", ANYBODY),
            line(GET, "/actuator/health/liveness", ANYBODY),
            line(GET, "/actuator/health/readiness", ANYBODY),
            line(GET, "/actuator/prometheus", METRICS_TOKEN),
            line(GET, "/login", ANYBODY),
            line(POST, "/login", ANYBODY),
            line(GET, "/setup", ANYBODY),
            line(POST, "/setup", ANYBODY),
            line(POST, "/logout", OWN_PASSWORD),
            line(GET, "/account", OWN_PASSWORD),
            line(POST, "/account/password", OWN_PASSWORD),
            line(POST, "/account/sign-out-everywhere", OWN_PASSWORD),
            line(POST, "/preferences/units", ANYBODY),
            line(GET, "/", READ),
            line(GET, "/changes", READ),
            line(GET, "/audit", READ),
            line(POST, "/audit/check", READ),
            line(GET, "/audit/file.zip", READ),
            line(GET, "/export", READ),
            line(GET, "/export/tests.csv", READ),
            line(GET, "/export/all.zip", READ),
            line(GET, "/export/pack", READ),
            line(GET, "/export/pack/{compressor}.zip", READ),
            line(GET, "/export/{name}.csv", READ),
            line(GET, "/import", MANAGE),
            line(POST, "/import", MANAGE),
            line(GET, "/import/template.csv", MANAGE),
            line(GET, "/import/{id}", MANAGE),
            line(POST, "/import/{id}", MANAGE),
            line(GET, "/sites", READ),
            line(GET, "/sites/new", MANAGE),
            line(POST, "/sites", MANAGE),
            line(GET, "/sites/{id}", READ),
            line(POST, "/sites/{id}", MANAGE),
            line(GET, "/sites/{id}/edit", MANAGE),
            line(GET, "/sites/{id}/labels", READ),
            line(GET, "/sites/{id}/labels.pdf", READ),
            line(GET, "/sites/{id}/limits", READ),
            line(POST, "/sites/{id}/limits", MANAGE),
            line(GET, "/supply", READ),
            line(GET, "/sites/{id}/supply", READ),
            line(GET, "/sites/{id}/supply/choices", READ),
            line(POST, "/sites/{id}/supply/choices", MANAGE),
            line(GET, "/sites/{id}/demand", READ),
            line(GET, "/sites/{id}/demand/new", RECORD),
            line(POST, "/sites/{id}/demand", RECORD),
            line(GET, "/demand/{id}", READ),
            line(POST, "/demand/{id}", RECORD),
            line(GET, "/demand/{id}/edit", RECORD),
            line(GET, "/sites/{id}/leak-tests", READ),
            line(GET, "/sites/{id}/leak-tests/new", RECORD),
            line(POST, "/sites/{id}/leak-tests", RECORD),
            line(GET, "/leak-tests/{id}", READ),
            line(GET, "/leak-tests/{old}/correct", MANAGE),
            line(POST, "/leak-tests/{old}/correct", MANAGE),
            line(GET, "/sites/{id}/leaks", READ),
            line(GET, "/sites/{id}/leaks/new", RECORD),
            line(POST, "/sites/{id}/leaks", RECORD),
            line(GET, "/leaks/{id}", READ),
            line(POST, "/leaks/{id}/steps", RECORD),
            line(GET, "/leaks/{id}/withdraw", MANAGE),
            line(POST, "/leaks/{id}/withdraw", MANAGE),
            line(GET, "/sites/{id}/storage", READ),
            line(GET, "/sites/{id}/cost", READ),
            line(GET, "/sites/{id}/offers", READ),
            line(POST, "/sites/{id}/offers", MANAGE),
            line(GET, "/sites/{id}/offers/new", MANAGE),
            line(GET, "/offers/{id}", READ),
            line(POST, "/offers/{id}", MANAGE),
            line(GET, "/offers/{id}/edit", MANAGE),
            line(GET, "/compressors/new", MANAGE),
            line(POST, "/compressors", MANAGE),
            line(GET, "/compressors/{id}", READ),
            line(POST, "/compressors/{id}", MANAGE),
            line(GET, "/compressors/{id}/edit", MANAGE),
            line(GET, "/compressors/{id}/plan", READ),
            line(GET, "/compressors/{id}/tests/new", RECORD),
            line(POST, "/compressors/{id}/tests", RECORD),
            line(GET, "/compressors/{id}/card", READ),
            line(GET, "/compressors/{id}/sheet", READ),
            line(GET, "/compressors/{id}/sheet.pdf", READ),
            line(GET, "/compressors/{id}/label", READ),
            line(GET, "/compressors/{id}/label.pdf", READ),
            line(GET, "/compressors/{id}/baseline", MANAGE),
            line(POST, "/compressors/{id}/baseline", MANAGE),
            line(GET, "/compressors/{id}/events", READ),
            line(GET, "/compressors/{id}/events/new", RECORD),
            line(POST, "/compressors/{id}/events/new", RECORD),
            line(GET, "/events/{id}", READ),
            line(GET, "/events/{id}/correct", RECORD),
            line(POST, "/events/{id}/correct", RECORD),
            line(GET, "/events/{id}/withdraw", RECORD),
            line(POST, "/events/{id}/withdraw", RECORD),
            line(GET, "/receivers", READ),
            line(GET, "/receivers/new", MANAGE),
            line(POST, "/receivers", MANAGE),
            line(GET, "/receivers/{id}", READ),
            line(POST, "/receivers/{id}", MANAGE),
            line(GET, "/receivers/{id}/edit", MANAGE),
            line(GET, "/receivers/{id}/valves/new", MANAGE),
            line(POST, "/receivers/{id}/valves", MANAGE),
            line(GET, "/receivers/{id}/certificates/new", MANAGE),
            line(POST, "/receivers/{id}/certificates", MANAGE),
            line(GET, "/receivers/{id}/inspections/new", MANAGE),
            line(POST, "/receivers/{id}/inspections", MANAGE),
            line(GET, "/receivers/{id}/findings/new", RECORD),
            line(POST, "/receivers/{id}/findings", RECORD),
            line(GET, "/valves/{id}", READ),
            line(POST, "/valves/{id}", MANAGE),
            line(GET, "/valves/{id}/edit", MANAGE),
            line(GET, "/valves/{id}/tests/new", RECORD),
            line(POST, "/valves/{id}/tests", RECORD),
            line(GET, "/valve-tests/{id}/correct", RECORD),
            line(POST, "/valve-tests/{id}/correct", RECORD),
            line(GET, "/certificates/{id}", READ),
            line(POST, "/certificates/{id}", MANAGE),
            line(GET, "/certificates/{id}/edit", MANAGE),
            line(GET, "/inspections/{old}/correct", MANAGE),
            line(POST, "/inspections/{old}/correct", MANAGE),
            line(GET, "/findings/{id}/clear", MANAGE),
            line(POST, "/findings/{id}/clear", MANAGE),
            line(GET, "/due", READ),
            line(GET, "/sites/{id}/intervals", READ),
            line(GET, "/sites/{id}/intervals/{kind}", MANAGE),
            line(POST, "/sites/{id}/intervals/{kind}", MANAGE),
            line(GET, "/account/calendar", READ),
            line(POST, "/account/calendar", READ),
            line(POST, "/account/calendar/{id}/revoke", READ),
            line(GET, "/calendar/{token}.ics", ANYBODY),
            line(GET, "/pipes", READ),
            line(GET, "/pipes/new", MANAGE),
            line(POST, "/pipes", MANAGE),
            line(POST, "/pipes/{id}", MANAGE),
            line(GET, "/pipes/{id}/edit", MANAGE),
            line(GET, "/instruments", READ),
            line(GET, "/instruments/new", MANAGE),
            line(POST, "/instruments", MANAGE),
            line(GET, "/instruments/{id}", READ),
            line(POST, "/instruments/{id}", MANAGE),
            line(GET, "/instruments/{id}/edit", MANAGE),
            line(GET, "/instruments/{id}/calibrations/new", MANAGE),
            line(POST, "/instruments/{id}/calibrations", MANAGE),
            line(GET, "/instruments/{id}/calibrations/{old}/supersede", MANAGE),
            line(POST, "/instruments/{id}/calibrations/{old}/supersede", MANAGE),
            line(GET, "/calibrations/{id}/impact", READ),
            line(POST, "/calibrations/{id}/impact", MANAGE),
            line(GET, "/tests", READ),
            line(GET, "/tests/new", RECORD),
            line(GET, "/tests/{id}", READ),
            line(GET, "/tests/{id}/report", READ),
            line(GET, "/tests/{id}/report.pdf", READ),
            line(GET, "/tests/{id}/review", MANAGE),
            line(POST, "/tests/{id}/review", MANAGE),
            line(GET, "/tests/{id}/supersede", RECORD),
            line(POST, "/tests/{id}/supersede", RECORD),
            line(GET, "/tests/{id}/curve", READ),
            line(GET, "/tests/{id}/logs/new", RECORD),
            line(POST, "/tests/{id}/logs/new", RECORD),
            line(GET, "/tests/{id}/logs/new/{key}", RECORD),
            line(POST, "/tests/{id}/logs/new/{key}", RECORD),
            line(GET, "/logs/{id}", READ),
            line(GET, "/logs/{id}/file", READ),
            line(GET, "/logs/{id}/withdraw", RECORD),
            line(POST, "/logs/{id}/withdraw", RECORD),
            line(GET, "/attachments/of/{kind}/{object}", READ),
            line(POST, "/attachments/of/{kind}/{object}", RECORD),
            line(GET, "/attachments/{id}", READ),
            line(GET, "/attachments/{id}/file", READ),
            line(GET, "/attachments/{id}/withdraw", MANAGE),
            line(POST, "/attachments/{id}/withdraw", MANAGE),
            line(GET, "/sw.js", ANYBODY),
            line(GET, "/guided", RECORD),
            line(GET, "/guided/token", RECORD),
            line(GET, "/guided/drafts/{key}", RECORD),
            line(POST, "/guided/drafts/{key}", RECORD),
            line(GET, "/guided/readings/{id}", READ),
            line(GET, "/guided/readings/{id}/correct", RECORD),
            line(POST, "/guided/readings/{id}/correct", RECORD),
            line(GET, "/guided/{id}", RECORD),
            line(POST, "/guided/{id}", RECORD),
            line(POST, "/guided/{id}/send", RECORD),
            line(POST, "/guided/{id}/draft", RECORD),
            line(POST, "/compressors/{id}/tests/preview", RECORD),
            line(POST, "/compressors/{id}/tests/hold", RECORD),
            line(GET, "/api/v1/openapi.json", READ),
            line(ANY, "/api/v1/pump-up/evaluate", READ),
            line(GET, "/backup", ADMINISTER),
            line(POST, "/backup", ADMINISTER),
            line(GET, "/backup/{name}", ADMINISTER),
            line(GET, "/accounts", ADMINISTER),
            line(GET, "/accounts/new", ADMINISTER),
            line(POST, "/accounts", ADMINISTER),
            line(GET, "/accounts/sign-ins", ADMINISTER),
            line(GET, "/accounts/{id}/edit", ADMINISTER),
            line(POST, "/accounts/{id}", ADMINISTER),
            line(POST, "/accounts/{id}/password", ADMINISTER));

    private AccessRules() {}

    /**
     * One line of the table.
     *
     * @param method HTTP method, or {@code any}
     * @param path pattern of the path
     * @param access what it asks of the caller
     */
    public record Line(String method, PathPattern path, Access access) {

        private boolean matches(String called, PathContainer address) {
            boolean sameMethod = method.equals(ANY) || method.equals(called.equals("HEAD") ? GET : called);
            return sameMethod && path.matches(address);
        }
    }

    /** What this request asks of the caller; empty when no line knows it. */
    public static Optional<Line> find(String method, PathContainer path) {
        return LINES.stream().filter(line -> line.matches(method, path)).findFirst();
    }

    /** The methods by which a path can be called at all. */
    public static Stream<String> methods(PathContainer path) {
        return LINES.stream().filter(line -> line.path().matches(path)).map(Line::method);
    }

    private static Line line(String method, String path, Access access) {
        return new Line(method, PathPatternParser.defaultInstance.parse(path), access);
    }
}
