package plantair;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.Yaml;

/** docker-compose.yml and the Caddyfile as far as they can be read; they are run by no test. */
final class ComposeTests {

    private static final Path COMPOSE = Path.of("docker-compose.yml");
    private static final Path CADDYFILE = Path.of("src/main/docker/Caddyfile");
    private static final Path OPERATING = Path.of("docs/operating.md");
    private static final Set<String> OURS = Set.of("app", "first", "second");
    private static final Pattern PROPERTY = Pattern.compile("`([a-z][a-z0-9-]*(?:\\.[a-z0-9-]+)+)`");
    private static final Pattern VARIABLE = Pattern.compile("\\$\\{([A-Z_]+)");

    private final Map<String, Object> compose = new Yaml().load(read(COMPOSE));
    private final Map<String, Map<String, Object>> services = map(compose, "services");

    @Test
    void startOneInstanceWithoutTheProfileAndTwoBehindAProxyWithIt() {
        assertThat(namesOf(List.of())).containsExactly("app", "database");
        assertThat(namesOf(List.of("instances"))).containsExactly("first", "proxy", "second");
        assertThat(services.get("second")).isEqualTo(services.get("first"));
        assertThat(services.get("first").get("build"))
                .isEqualTo(services.get("app").get("build"));
    }

    private Set<String> namesOf(List<String> profiles) {
        return services.entrySet().stream()
                .filter(service ->
                        service.getValue().getOrDefault("profiles", List.of()).equals(profiles))
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void nameOnlySettingsThatThereAre() throws IOException {
        Set<String> known = Stream.concat(
                        ownProperties().stringPropertyNames().stream(),
                        PROPERTY.matcher(read(OPERATING)).results().map(found -> found.group(1)))
                .map(name -> name.replaceAll("[.-]", "_").toUpperCase(Locale.ROOT))
                .collect(Collectors.toSet());

        for (String ours : OURS) {
            Map<String, Object> environment = map(services.get(ours), "environment");
            assertThat(known).as(ours).containsAll(environment.keySet());
            assertThat(environment.get("SPRING_DATASOURCE_URL")).isEqualTo("jdbc:postgresql://database:5432/plantair");
        }
    }

    private static Properties ownProperties() throws IOException {
        var properties = new Properties();
        properties.load(new StringReader(read(Path.of("src/main/resources/application.properties"))));
        return properties;
    }

    @Test
    void publishNothingButTheProxyBeyondThisMachine() {
        services.forEach((name, service) -> {
            List<String> ports = list(service, "ports");
            if (name.equals("proxy")) {
                assertThat(ports).containsExactly("80:80", "443:443");
            } else {
                assertThat(ports).as(name).allMatch(port -> port.startsWith("127.0.0.1:"));
            }
        });
        assertThat(list(services.get("first"), "ports")).isEmpty();
    }

    @Test
    void waitForADatabaseThatSaysItIsReady() {
        for (String ours : OURS) {
            assertThat(services.get(ours).get("depends_on"))
                    .isEqualTo(Map.of("database", Map.of("condition", "service_healthy")));
        }
        assertThat(services.get("database")).containsKey("healthcheck");
        assertThat(services.get("proxy")).containsKey("healthcheck");
        assertThat(list(services.get("proxy"), "depends_on")).containsExactly("first", "second");
    }

    @Test
    void keepWhatLastsInVolumesThatAreNamed() {
        List<String> used = new ArrayList<>();
        services.values()
                .forEach(service -> list(service, "volumes").forEach(volume -> used.add(volume.split(":")[0])));

        assertThat(used).containsExactlyInAnyOrder("database", "certificates", "./" + CADDYFILE);
        assertThat(map(compose, "volumes").keySet()).containsExactlyInAnyOrder("database", "certificates");
    }

    /** One password, and the host with a default: nothing else has to be known. */
    @Test
    void askForOneVariable() {
        Set<String> variables = VARIABLE.matcher(read(COMPOSE))
                .results()
                .map(found -> found.group(1))
                .collect(Collectors.toSet());

        assertThat(variables).containsExactlyInAnyOrder("PLANTAIR_DB_PASSWORD", "PLANTAIR_HOST");
        assertThat(read(OPERATING)).contains("docker compose --profile instances up --build first second proxy");
    }

    @Test
    void haveAProxyThatLeadsToBothInstancesAndAsksWhetherTheyAreReady() {
        String caddy = read(CADDYFILE);
        List<String> upstreams = Pattern.compile("(?m)^\\s*reverse_proxy ([a-z0-9: ]+) \\{$")
                .matcher(caddy)
                .results()
                .flatMap(found -> Stream.of(found.group(1).split(" ")))
                .toList();

        assertThat(upstreams).containsExactly("first:8080", "second:8080");
        for (String upstream : upstreams) {
            Map<String, Object> environment = map(services.get(upstream.split(":")[0]), "environment");
            List<String> hosts = List.of(
                    String.valueOf(environment.get("PLANTAIR_ALLOWED_HOSTS")).split(","));
            assertThat(hosts).contains(upstream.split(":")[0], "${PLANTAIR_HOST:-localhost}");
            assertThat(environment).containsEntry("SERVER_FORWARD_HEADERS_STRATEGY", "native");
        }
        assertThat(caddy).contains("health_uri /actuator/health/readiness").startsWith("#");
        assertThat(caddy.lines().filter(line -> line.startsWith("{$"))).containsExactly("{$PLANTAIR_HOST:localhost} {");
        assertThat(map(services.get("proxy"), "environment")).containsOnlyKeys("PLANTAIR_HOST");
        assertThat(braces(caddy, "\\{")).isEqualTo(braces(caddy, "\\}"));
    }

    private static long braces(String text, String brace) {
        return Pattern.compile(brace)
                .matcher(text)
                .results()
                .map(MatchResult::group)
                .count();
    }

    @SuppressWarnings("unchecked")
    private static <T> Map<String, T> map(Map<String, ?> from, String key) {
        return (Map<String, T>) from.get(key);
    }

    @SuppressWarnings("unchecked")
    private static List<String> list(Map<String, Object> from, String key) {
        return (List<String>) from.getOrDefault(key, List.of());
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }
}
