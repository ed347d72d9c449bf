package plantair.web.http;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletRequest;

/** What an error page may give back of a form. */
final class SentFieldsTests {

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
}
