package plantair.operation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.boot.context.properties.bind.Binder;
import org.springframework.boot.context.properties.source.ConfigurationPropertySources;
import org.springframework.core.env.StandardEnvironment;
import org.springframework.core.env.SystemEnvironmentPropertySource;
import tools.jackson.databind.json.JsonMapper;

/** The table of settings in docs/operating.md against the program, both ways. */
final class SettingsTests {

    private static final Path DOCUMENT = Path.of("docs/operating.md");
    private static final String HEAD = "| property | environment variable | default | meaning |";

    private static final Pattern ROW =
            Pattern.compile("(?m)^\\| `([a-z][a-z0-9.-]+)` \\| `([A-Z0-9_]+)` \\| ([^|]+) \\| ([^|]+) \\|$");

    /** Read by an annotation, with its default, or by name. */
    private static final Pattern READ =
            Pattern.compile("\\$\\{(plantair\\.[a-z.-]+)(?::([^}]*))?}|Property\\(\"(plantair\\.[a-z.-]+)\"");

    /** How the program is made, which nobody who runs it should change; each begins a line of application.properties. */
    private static final Set<String> FIXED = Set.of(
            "spring.application.",
            "spring.main.",
            "spring.session.jdbc.",
            "spring.flyway.",
            "spring.jpa.",
            "spring.messages.",
            "spring.thymeleaf.",
            "spring.web.",
            "spring.task.scheduling.shutdown.await-termination",
            "server.servlet.session.cookie.",
            "server.servlet.session.tracking-modes",
            "springdoc.",
            "management.",
            "logging.level.org.",
            "logging.pattern.");

    /** One row of the table. */
    private record Setting(String property, String variable, String standard) {

        @Override
        public String toString() {
            return property;
        }
    }

    private static List<Setting> rows() throws IOException {
        String text = Files.readString(DOCUMENT);
        int begin = text.indexOf(HEAD);
        String table = text.substring(begin, text.indexOf("\n\n", begin));
        List<Setting> rows = ROW.matcher(table)
                .results()
                .map(row -> new Setting(row.group(1), row.group(2), row.group(3)))
                .toList();
        assertThat(rows)
                .as("every line of the table is a row")
                .hasSize((int) table.lines().count() - 2);
        return rows;
    }

    private static Set<String> names() throws IOException {
        return rows().stream().map(Setting::property).collect(Collectors.toSet());
    }

    /** What application.properties says. */
    private static Map<String, String> file() throws IOException {
        var properties = new Properties();
        try (var in = Files.newInputStream(Path.of("src/main/resources/application.properties"))) {
            properties.load(in);
        }
        return properties.stringPropertyNames().stream()
                .collect(Collectors.toMap(name -> name, properties::getProperty));
    }

    /** Every setting of our own that the source reads, with the default beside it. */
    private static Map<String, String> read() throws IOException {
        Map<String, String> found = new HashMap<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                for (MatchResult use :
                        READ.matcher(Files.readString(file)).results().toList()) {
                    if (use.group(1) != null) {
                        found.put(use.group(1), use.group(2) == null ? "" : use.group(2));
                    } else {
                        found.putIfAbsent(use.group(3), "");
                    }
                }
            }
        }
        return found;
    }

    /** Names of all settings that the framework describes. */
    private static Set<String> ofTheFramework() throws IOException {
        Set<String> names = new TreeSet<>();
        for (URL place : Collections.list(
                SettingsTests.class.getClassLoader().getResources("META-INF/spring-configuration-metadata.json"))) {
            try (InputStream in = place.openStream()) {
                JsonMapper.shared().readTree(in).path("properties").forEach(one -> {
                    if (one.path("deprecation").isMissingNode()) {
                        names.add(one.path("name").asString());
                    }
                });
            }
        }
        return names;
    }

    @Test
    void hasARowForEverySettingOfOurOwn() throws IOException {
        Set<String> ours = new TreeSet<>(read().keySet());
        file().keySet().stream().filter(name -> name.startsWith("plantair.")).forEach(ours::add);

        assertThat(ours).hasSizeGreaterThan(15).contains("plantair.metrics.token", "plantair.backup.at");
        assertThat(names()).containsAll(ours);
    }

    @Test
    void hasARowForEveryOtherLineThatMayBeChanged() throws IOException {
        Set<String> set = file().keySet();

        assertThat(set.stream().filter(name -> FIXED.stream().noneMatch(name::startsWith)))
                .hasSizeGreaterThan(20)
                .isSubsetOf(names());
        assertThat(FIXED).allSatisfy(begin -> assertThat(set).anyMatch(name -> name.startsWith(begin)));
    }

    @Test
    void namesNothingThatIsNotThere() throws IOException {
        Set<String> known = ofTheFramework();
        assertThat(known).hasSizeGreaterThan(500);

        Set<String> ours = read().keySet();
        assertThat(names())
                .allSatisfy(name -> assertThat(ours.contains(name)
                                || known.contains(name)
                                || name.startsWith("logging.level.") && known.contains("logging.level"))
                        .as(name)
                        .isTrue());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void saysTheDefaultThatCounts(Setting row) throws IOException {
        String set = file().getOrDefault(row.property(), read().getOrDefault(row.property(), ""));
        boolean inWords = set.isEmpty() || row.property().equals("spring.datasource.url");

        assertThat(inWords || row.standard().equals("`" + set + "`"))
                .as("%s is %s", row, set)
                .isTrue();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void bindsItsEnvironmentVariable(Setting row) {
        var environment = new StandardEnvironment();
        environment
                .getPropertySources()
                .addFirst(new SystemEnvironmentPropertySource(
                        StandardEnvironment.SYSTEM_ENVIRONMENT_PROPERTY_SOURCE_NAME,
                        Map.of(row.variable(), "from outside")));
        ConfigurationPropertySources.attach(environment);

        assertThat(row.variable())
                .isEqualTo(row.property().toUpperCase(Locale.ROOT).replaceAll("[.-]", "_"));
        assertThat(environment.getProperty(row.property())).isEqualTo("from outside");
        assertThat(Binder.get(environment).bind(row.property(), String.class).get())
                .isEqualTo("from outside");
    }

    /** Two tables would soon tell two things. */
    @Test
    void standsInOnePlace() throws IOException {
        try (Stream<Path> documents = Stream.concat(Files.walk(Path.of("docs")), Stream.of(Path.of("README.md")))) {
            assertThat(documents
                            .filter(path -> path.toString().endsWith(".md"))
                            .filter(path -> text(path).contains("| property |")))
                    .containsExactly(DOCUMENT);
        }
        assertThat(Files.readString(DOCUMENT).split(Pattern.quote("| property |"), -1))
                .hasSize(2);
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
