package plantair;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every template, style sheet and script must keep to. */
class TemplateRulesTests {

    private static final Path TEMPLATES = Path.of("src/main/resources/templates");
    private static final Path STATIC = Path.of("src/main/resources/static");
    private static final Path FIELDS = TEMPLATES.resolve("fragments/field.html");
    private static final Pattern EXTERNAL = Pattern.compile("(?i)(https?:)?//(?!www\\.thymeleaf\\.org)[a-z0-9]");
    private static final Pattern COLOUR = Pattern.compile("#[0-9a-fA-F]{3,8}\\b|\\brgba?\\(|\\bhsla?\\(");
    private static final Pattern VARIABLE = Pattern.compile("^\\s*--[\\w-]+:.*");

    static List<Path> templates() {
        return files(TEMPLATES, ".html");
    }

    static List<Path> scripts() {
        return files(STATIC.resolve("js"), ".js");
    }

    @Test
    void findsTemplatesAndScripts() {
        assertThat(templates()).contains(FIELDS).hasSizeGreaterThan(3);
        assertThat(scripts()).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("templates")
    void leavesControlsToTheFieldFragments(Path template) {
        var controls = parsed(template).select("input:not([type=hidden]), select, textarea");

        assertThat(controls.isEmpty() || template.equals(FIELDS))
                .as(controls.toString())
                .isTrue();
    }

    @ParameterizedTest
    @MethodSource("templates")
    void hasNoInlineStyleOrScript(Path template) {
        var page = parsed(template);

        assertThat(page.select("style, [style]")).isEmpty();
        assertThat(text(template)).doesNotContain("th:style");
        assertThat(page.select("script")).allMatch(script -> script.hasAttr("th:src"));
        assertThat(page.select("script").eachText())
                .allSatisfy(text -> assertThat(text).isBlank());
        assertThat(page.getAllElements())
                .allSatisfy(element -> assertThat(element.attributes().asList())
                        .noneSatisfy(
                                attribute -> assertThat(attribute.getKey()).matches("(?i)(th:|data-th-)?on[a-z]+")));
    }

    @ParameterizedTest
    @MethodSource("templates")
    void callsNoClassAndPrintsNoUnescapedText(Path template) {
        assertThat(text(template)).doesNotContainPattern("\\bT\\s*\\(").doesNotContain("th:utext", "[(", "javascript:");
    }

    @ParameterizedTest
    @MethodSource("templates")
    void refersToThisSiteOnly(Path template) {
        assertThat(text(template)).doesNotContainPattern(EXTERNAL);
    }

    @ParameterizedTest
    @MethodSource("templates")
    void staysShort(Path template) {
        int most = template.equals(FIELDS) ? 220 : 120;

        assertThat(lines(template)).hasSizeLessThanOrEqualTo(most);
    }

    @ParameterizedTest
    @MethodSource("templates")
    void hasOneHeadingInsideMainOfAPage(Path template) {
        var page = parsed(template);
        boolean isPage = page.select("main").stream().anyMatch(main -> !main.hasAttr("th:replace"));

        assertThat(page.select("main h1")).hasSize(isPage ? 1 : 0);
        assertThat(page.select("html").first().attr("lang")).isEqualTo("en");
    }

    @ParameterizedTest
    @MethodSource("templates")
    void labelsWhatScrollsAndHeadsEveryTable(Path template) {
        var page = parsed(template);

        for (Element scroll : page.select(".scroll")) {
            assertThat(scroll.hasAttr("tabindex") && scroll.attr("role").equals("group"))
                    .as(scroll.outerHtml())
                    .isTrue();
            assertThat(scroll.hasAttr("aria-label")
                            || scroll.hasAttr("th:aria-label")
                            || scroll.hasAttr("aria-labelledby"))
                    .as(scroll.outerHtml())
                    .isTrue();
        }
        assertThat(page.select("thead th:not([scope])")).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("scripts")
    void keepsScriptsShortAndLocal(Path script) {
        assertThat(lines(script)).hasSizeLessThanOrEqualTo(150);
        assertThat(text(script))
                .doesNotContain("innerHTML", "eval(", "document.write")
                .doesNotContainPattern("https?://");
    }

    @Test
    void keepsTheStyleSheetShortAndItsColoursInVariables() {
        var css = STATIC.resolve("css/app.css");

        assertThat(lines(css)).hasSizeLessThanOrEqualTo(250);
        assertThat(lines(css).stream().filter(line -> !VARIABLE.matcher(line).matches()))
                .noneMatch(line -> COLOUR.matcher(line).find());
        assertThat(text(css)).doesNotContain("@import", "url(");
    }

    private static Document parsed(Path template) {
        return Jsoup.parse(text(template), "", Parser.htmlParser());
    }

    private static String text(Path file) {
        return String.join("\n", lines(file));
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static List<Path> files(Path folder, String ending) {
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk.filter(file -> file.toString().endsWith(ending))
                    .sorted()
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
