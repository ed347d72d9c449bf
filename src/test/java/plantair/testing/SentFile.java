package plantair.testing;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;

import java.util.UUID;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.account.SignedIn;

/**
 * A photo or paper as a browser sends it.
 *
 * @param to kind and number of the record, as {@code COMPRESSOR/1}
 * @param name of the file
 * @param bytes of the file
 * @param description what it shows
 * @param submission key of the form
 */
public record SentFile(String to, String name, byte[] bytes, String description, String submission) {

    public static SentFile of(String to, String name, byte[] bytes, String description) {
        return new SentFile(to, name, bytes, description, UUID.randomUUID().toString());
    }

    public SentForm.Answer send(MockMvcTester site) {
        return send(site, People.ANN);
    }

    public SentForm.Answer send(MockMvcTester site, SignedIn who) {
        return new SentForm.Answer(site.post()
                .uri("/attachments/of/" + to)
                .multipart()
                .file(new MockMultipartFile("file", name, "application/octet-stream", bytes))
                .param("submission", submission)
                .param("description", description)
                .with(authentication(People.proof(who)))
                .exchange()
                .getResponse());
    }
}
