package plantair.attachment.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.testing.Client;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.People;
import plantair.testing.PlantForms;
import plantair.testing.SampleFiles;

/** Uploads over the wire, where the server itself has a say. */
@OnH2
final class AttachmentServerTests {

    private static final String ADDRESS = "/attachments/of/COMPRESSOR/1";

    @LocalServerPort
    private int port;

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    private Client ann;

    @BeforeEach
    void signIn() {
        database.wipe();
        assertThat(PlantForms.SITE.post(site).status()).isEqualTo(302);
        assertThat(PlantForms.COMPRESSOR.post(site).status()).isEqualTo(302);
        ann = Client.signedIn("http://127.0.0.1:" + port, "ann", People.PASSWORD);
    }

    private static Map<String, String> form() {
        return Map.of("submission", UUID.randomUUID().toString(), "description", "plate Ä");
    }

    @Test
    void takesAPhotoAndGivesItBack() {
        byte[] photo = SampleFiles.picture("jpg", 2400, 1600, 8);
        assertThat(photo.length).isGreaterThan(2_000_000);

        assertThat(ann.upload(ADDRESS, form(), "a.jpg", photo).statusCode()).isEqualTo(302);

        assertThat(ann.file("/attachments/1/file").body()).isEqualTo(photo);
        assertThat(ann.page(ADDRESS)).contains("plate Ä");
    }

    @Test
    void saysBesideTheFieldThatAFileIsTooLarge() {
        var answer = ann.upload(ADDRESS, form(), "a.jpg", new byte[12_000_000]);

        Document page = Jsoup.parse(answer.body());
        assertThat(answer.statusCode()).isEqualTo(413);
        assertThat(page.getElementById("file-error").text()).contains("more than 10 MB");
        assertThat(page.select("[name=description]").val()).isEqualTo("plate Ä");
    }

    /** More than any upload may have: the server reads no further, but the browser gets a page and no cut connection. */
    @Test
    void answersWithAPageWhateverTheSize() {
        for (int size : new int[] {22_000_000, 50_000_000}) {
            var answer = ann.upload(ADDRESS, form(), "a.jpg", new byte[size]);

            assertThat(answer.statusCode()).isEqualTo(413);
            assertThat(answer.body()).startsWith("Too much at once").contains("Nothing was saved");
        }
    }
}
