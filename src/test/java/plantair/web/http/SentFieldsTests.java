package plantair.web.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletRequest;

/** What an error page may give back of a form. */
final class SentFieldsTests {

    private static final Pattern HIDDEN = Pattern.compile("credential\\('([\\w.]+)', [^)]*'password'");

    private final MockHttpServletRequest request = new MockHttpServletRequest("POST", "/tests");

    @Test
    void keepsEveryFieldAndShowsThoseThatWereTyped() {
        request.addParameter("notes", "wet <b>day</b>");
        request.addParameter("receivers", "1", "2");
        request.addParameter("serial", "");
        request.addParameter("submission", "6f0c");

        var sent = SentFields.of(request);

        assertThat(sent.isWhole()).isTrue();
        assertThat(sent.fields()).hasSize(5);
        assertThat(sent.readable())
                .extracting(SentFields.Field::value)
                .containsExactlyInAnyOrder("wet <b>day</b>", "1", "2");
    }

    @Test
    void givesNoSecretBackAndThenOffersNoSecondSending() {
        request.addParameter("name", "Ann");
        request.addParameter("newPassword", "hush");
        request.addParameter("_csrf", "token");

        var sent = SentFields.of(request);

        assertThat(sent.isWhole()).isFalse();
        assertThat(sent.fields()).extracting(SentFields.Field::name).containsExactly("name");
    }

    /** Every field of the pages that a browser hides while it is typed, and the code of the first start. */
    @Test
    void knowsEverySecretOfThePages() throws IOException {
        Set<String> secrets = new TreeSet<>(Set.of("code"));
        try (var templates = Files.walk(Path.of("src/main/resources/templates"))) {
            for (Path template : templates.filter(Files::isRegularFile).toList()) {
                HIDDEN.matcher(Files.readString(template)).results().forEach(match -> secrets.add(match.group(1)));
            }
        }
        assertThat(secrets).contains("password", "again", "current");
        secrets.forEach(name -> request.addParameter(name, "hush"));

        assertThat(SentFields.of(request).fields()).isEmpty();
    }
}
