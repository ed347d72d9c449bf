package plantair.attachment.web;

import static org.assertj.core.api.Assertions.assertThat;
import static plantair.testing.SampleFiles.ascii;
import static plantair.testing.SampleFiles.both;
import static plantair.testing.SampleFiles.flatPng;
import static plantair.testing.SampleFiles.jpeg;
import static plantair.testing.SampleFiles.pdf;
import static plantair.testing.SampleFiles.picture;
import static plantair.testing.SampleFiles.png;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.account.Role;
import plantair.attachment.AttachedTo;
import plantair.audit.AuditCheck;
import plantair.testing.Database;
import plantair.testing.LeakForms;
import plantair.testing.OfferForms;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.People;
import plantair.testing.PlantForms;
import plantair.testing.SentFile;
import plantair.testing.SentForm;
import plantair.testing.VesselForms;

/** Photos and papers on the pages. */
abstract class AttachmentWebTests {

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private AuditCheck audit;

    @BeforeEach
    void startWithAMachine() {
        database.wipe();
        database.recordPeople();
        send(PlantForms.SITE, PlantForms.COMPRESSOR, PlantForms.RECEIVER, PlantForms.PIPE, PlantForms.GAUGE);
    }

    private void send(SentForm... forms) {
        for (SentForm form : forms) {
            assertThat(form.post(site).status()).as(form.address()).isEqualTo(302);
        }
    }

    private SentForm.Answer attach(String to, String name, byte[] bytes) {
        return SentFile.of(to, name, bytes, "plate of C-1").send(site);
    }

    private MockHttpServletResponse file(long id) {
        return SentForm.get(site, "/attachments/" + id + "/file", People.of(Role.AUDITOR))
                .response();
    }

    private long count(String table) {
        return jdbc.queryForObject("select count(*) from " + table, Long.class);
    }

    @Test
    void showsAPhotoWithItsWordsOnThePageOfItsRecord() {
        var answer = SentFile.of("COMPRESSOR/1", "plate.jpg", jpeg(), "plate: 35 cfm & \"175 psi\"")
                .send(site, People.of(Role.TECHNICIAN));

        assertThat(answer.redirect()).isEqualTo("/attachments/of/COMPRESSOR/1");
        var page = SentForm.get(site, "/compressors/1").page();
        assertThat(page.select("section[aria-labelledby=papers] img"))
                .singleElement()
                .satisfies(image -> {
                    assertThat(image.attr("alt")).isEqualTo("plate: 35 cfm & \"175 psi\"");
                    assertThat(image.attr("src")).isEqualTo("/attachments/1/file");
                });
        assertThat(SentForm.get(site, "/attachments/1").text()).contains("plate.jpg", "JPEG", "Cy (cy)");
        assertThat(SentForm.get(site, "/changes").text()).contains("Photo or paper of C-1", "plate.jpg");
        assertThat(audit.check(read -> {}).faults()).isEmpty();
    }

    @Test
    void givesBackTheSameBytesAndLetsABrowserRunNothing() {
        byte[] large = picture("png", 900, 700, 5);
        assertThat(large.length).as("several pieces").isGreaterThan(3 * 512 * 1024);
        attach("SITE/1", "yard.png", large);
        byte[] paper = pdf();
        attach("RECEIVER/1", "certificate.pdf", paper);

        assertThat(file(1).getContentAsByteArray()).isEqualTo(large);
        assertThat(file(2).getContentAsByteArray()).isEqualTo(paper);
        assertThat(headers(1))
                .containsEntry("Content-Type", "image/png")
                .containsEntry("Content-Length", String.valueOf(large.length))
                .containsEntry("Content-Security-Policy", "default-src 'none'; sandbox; frame-ancestors 'none'")
                .containsEntry("X-Content-Type-Options", "nosniff")
                .containsEntry("Cross-Origin-Resource-Policy", "same-origin");
        assertThat(headers(1).get("Content-Disposition")).startsWith("inline");
        assertThat(headers(2).get("Content-Disposition")).startsWith("attachment");
        assertThat(headers(2)).containsEntry("Content-Type", "application/pdf");
    }

    private Map<String, String> headers(long id) {
        var response = file(id);
        Map<String, String> headers = new TreeMap<>();
        response.getHeaderNames().forEach(name -> headers.put(name, response.getHeader(name)));
        return headers;
    }

    @Test
    void storesTheSameBytesOnceAndAFormSentTwiceOnce() {
        SentFile sent = SentFile.of("COMPRESSOR/1", "a.jpg", jpeg(), "plate");
        sent.send(site);
        sent.send(site);
        attach("RECEIVER/1", "b.jpg", jpeg());

        assertThat(List.of(count("attachment"), count("attachment_content"), count("attachment_piece")))
                .containsExactly(2L, 1L, 1L);
    }

    /** All of them find no such bytes and store them: one does, the others use those. */
    @Test
    void storesTheSameBytesOnceWhenSentByManyAtTheSameMoment() {
        byte[] photo = picture("png", 400, 400, 11);

        List<Integer> answers = IntStream.range(0, 4)
                .mapToObj(i -> CompletableFuture.supplyAsync(
                        () -> attach("COMPRESSOR/1", "a.png", photo).status()))
                .toList()
                .stream()
                .map(CompletableFuture::join)
                .toList();

        assertThat(answers).containsOnly(302);
        assertThat(List.of(count("attachment"), count("attachment_content"))).containsExactly(4L, 1L);
        assertThat(audit.check(read -> {}).faults()).isEmpty();
    }

    @Test
    void saysBesideTheFieldWhyAFileIsRefused() {
        Map<String, byte[]> bad = Map.of(
                "holiday.jpg", ascii("MZ\u0090\0 this program cannot be run"),
                "cut.png", Arrays.copyOf(png(), 400),
                "both.jpg", both(jpeg(), ascii("<script>alert(1)</script>")),
                "bomb.png", flatPng(20_000, 20_000),
                "IMG_1.HEIC", ascii("\0\0\0\u0018ftypheic\0\0\0\0mif1heic"),
                "empty.pdf", new byte[0]);
        Map<String, String> said = Map.of(
                "holiday.jpg", "no JPEG, PNG or PDF, whatever its name says",
                "cut.png", "damaged or breaks off",
                "both.jpg", "hidden behind the picture",
                "bomb.png", "400 million points; up to 64 million",
                "IMG_1.HEIC", "JPEG (“most compatible”)",
                "empty.pdf", "Choose a file");

        bad.forEach((name, bytes) -> {
            var answer = attach("COMPRESSOR/1", name, bytes);
            assertThat(answer.status()).as(name).isEqualTo(422);
            assertThat(answer.error("file")).as(name).contains(said.get(name));
            assertThat(answer.typed("description")).isEqualTo("plate of C-1");
        });
        assertThat(count("attachment") + count("attachment_content") + count("attachment_piece"))
                .isZero();
    }

    @Test
    void saysBesideTheFieldThatAFileIsTooLarge() {
        var answer = attach("COMPRESSOR/1", "large.jpg", new byte[10_000_001]);

        assertThat(answer.status()).isEqualTo(413);
        assertThat(answer.error("file")).contains("more than 10 MB");
        assertThat(answer.typed("description")).isEqualTo("plate of C-1");
    }

    @Test
    void asksForAFileAndForWordsAtOnce() {
        var answer = SentFile.of("COMPRESSOR/1", "x.jpg", new byte[0], " ").send(site);

        assertThat(answer.error("file")).isNotEmpty();
        assertThat(answer.error("description")).isNotEmpty();
    }

    @Test
    void keepsNamesAsTypedButForWhatAHeaderOrPageMustNotHold() {
        attach("SITE/1", "../../etc/Über \"plate\"; x=\u202Egnp.exe\r\nSet-Cookie: a=b\0", png());
        attach("SITE/1", "C:\\photos\\PLATE.JPEG", jpeg());
        attach("SITE/1", "n".repeat(400) + ".png", png());
        attach("SITE/1", "///", jpeg());
        attach("SITE/1", "a" + "\uD83D\uDE42".repeat(100), jpeg());

        assertThat(jdbc.queryForList("select name from attachment order by id", String.class))
                .containsExactly(
                        "Über \"plate\"; x=gnp.exeSet-Cookie: a=b",
                        "PLATE.JPEG",
                        "n".repeat(150),
                        "file",
                        "a" + "\uD83D\uDE42".repeat(74));
        String header = file(1).getHeader("Content-Disposition");
        assertThat(header).startsWith("inline; filename=").doesNotContain("\r", "\n");
        assertThat(header).contains("filename*=UTF-8''%C3%9Cber%20%22plate%22", "a%3Db.png");
        assertThat(file(2).getHeader("Content-Disposition"))
                .contains("PLATE.JPEG")
                .doesNotContain(".jpg");
    }

    @Test
    void withdrawsWithAReasonAndKeepsTheBytes() {
        attach("COMPRESSOR/1", "cat.jpg", jpeg());
        SentForm form = SentForm.to("/attachments/1/withdraw")
                .with("submission", "00000000-0000-0000-0000-000000000007")
                .with("reason", "");
        assertThat(form.post(site).error("reason")).isNotEmpty();
        assertThat(form.with("reason", "x")
                        .post(site, People.of(Role.TECHNICIAN))
                        .status())
                .isEqualTo(403);

        assertThat(form.with("reason", "not this machine")
                        .post(site, People.of(Role.MANAGER))
                        .redirect())
                .isEqualTo("/attachments/1");

        assertThat(SentForm.get(site, "/compressors/1").page().select("section[aria-labelledby=papers] img"))
                .isEmpty();
        assertThat(SentForm.get(site, "/attachments/of/COMPRESSOR/1").text())
                .contains("Withdrawn", "Bo (bo)", "not this machine");
        assertThat(file(1).getContentAsByteArray()).isEqualTo(jpeg());
        assertThat(SentForm.get(site, "/attachments/1/withdraw").redirect()).isEqualTo("/attachments/1");
        assertThat(form.with("reason", "again").post(site).redirect()).isEqualTo("/attachments/1");
        assertThat(count("attachment_withdrawal")).isEqualTo(1);
        assertThat(audit.check(read -> {}).faults()).isEmpty();
    }

    @Test
    void letsAnAuditorReadAndNotAttach() {
        assertThat(SentFile.of("COMPRESSOR/1", "a.jpg", jpeg(), "plate")
                        .send(site, People.of(Role.AUDITOR))
                        .status())
                .isEqualTo(403);

        var page = SentForm.get(site, "/attachments/of/COMPRESSOR/1", People.of(Role.AUDITOR));
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.page().select("main form")).isEmpty();
    }

    @Test
    void knowsOnlyRecordsThatAreThere() {
        assertThat(attach("COMPRESSOR/77", "a.jpg", jpeg()).status()).isEqualTo(404);
        assertThat(attach("ACCOUNT/1", "a.jpg", jpeg()).status()).isEqualTo(404);
        assertThat(SentForm.get(site, "/attachments/of/TEST/1").status()).isEqualTo(404);
        assertThat(SentForm.get(site, "/attachments/77/file").status()).isEqualTo(404);
    }

    /** Each kind that has a page of its own shows them there; the others have a link beside each record. */
    @Test
    void hasAPlaceForEveryKind() {
        send(
                PlantForms.certificate("K-1", "2026-01-02")
                        .with("points[0].reading", "140", "[psi]")
                        .with("points[0].error", "1", "[psi]"),
                PlantForms.pumpUp("2026-03-02", "60.2", "60.8", "60.5"),
                SentForm.to("/compressors/1/events/new")
                        .with("submission", "00000000-0000-0000-0000-000000000008")
                        .with("happenedOn", "2026-03-01")
                        .with("kind", "BELT"),
                PlantForms.pumpUp("2026-03-03", "60.2", "60.8", "60.5")
                        .at("/guided/1")
                        .with("submission", "00000000-0000-0000-0000-000000000009")
                        .with("figures.hours", "12034", "h"),
                OfferForms.OFFER,
                LeakForms.loadTimes("90 410 5", "88 412"),
                LeakForms.leak("L-1"));
        send(VesselForms.all().toArray(SentForm[]::new));
        Map<AttachedTo, String> listed = Map.of(
                AttachedTo.EVENT, "/compressors/1/events",
                AttachedTo.PIPE, "/pipes",
                AttachedTo.VALVE, "/receivers/1",
                AttachedTo.VALVE_TEST, "/receivers/1",
                AttachedTo.CERTIFICATE, "/receivers/1",
                AttachedTo.INSPECTION, "/receivers/1",
                AttachedTo.FINDING, "/receivers/1");

        for (AttachedTo to : AttachedTo.values()) {
            assertThat(attach(to + "/1", to + ".jpg", jpeg()).status())
                    .as(to.name())
                    .isEqualTo(302);
            String place = listed.getOrDefault(to, to.page(1));
            var page = SentForm.get(site, place).page();
            assertThat(page.select("a[href=/attachments/of/" + to + "/1]"))
                    .as(place)
                    .isNotEmpty();
            if (!listed.containsKey(to)) {
                assertThat(page.select("section[aria-labelledby=papers] img"))
                        .as(place)
                        .isNotEmpty();
            }
        }
        assertThat(audit.check(read -> {}).faults()).isEmpty();
    }
}

@OnH2
final class AttachmentOnH2WebTests extends AttachmentWebTests {}

@OnPostgres
final class AttachmentOnPostgresWebTests extends AttachmentWebTests {}
