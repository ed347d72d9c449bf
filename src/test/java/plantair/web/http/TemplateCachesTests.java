package plantair.web.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.cache.StandardCacheManager;
import plantair.testing.OnH2;

/** What was read of a template is there when the page is asked for again, whichever pages came between. */
@OnH2
final class TemplateCachesTests {

    private static final Path TEMPLATES = Path.of("src/main/resources/templates");

    /** An attribute holds some expressions, and each is kept as it is written and as it is understood. */
    private static final int EXPRESSIONS_OF_AN_ATTRIBUTE = 4;

    @Autowired
    private TemplateEngine engine;

    @Test
    void haveRoomForEveryPage() throws IOException {
        var caches = (StandardCacheManager) engine.getCacheManager();

        assertThat(caches.getTemplateCacheMaxSize()).isGreaterThan(found("~\\{").size());
        assertThat(caches.getExpressionCacheMaxSize())
                .isGreaterThan(EXPRESSIONS_OF_AN_ATTRIBUTE
                        * Set.copyOf(found("\\bth:[a-z-]+=\"[^\"]+\"")).size());
    }

    private static List<String> found(String pattern) throws IOException {
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(TEMPLATES)) {
            for (Path page : files.filter(Files::isRegularFile).toList()) {
                Pattern.compile(pattern)
                        .matcher(Files.readString(page))
                        .results()
                        .map(MatchResult::group)
                        .forEach(found::add);
            }
        }
        assertThat(found).isNotEmpty();
        return found;
    }
}
