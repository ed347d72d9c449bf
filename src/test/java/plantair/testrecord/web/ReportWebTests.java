package plantair.testrecord.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.equipment.Compressor;
import plantair.instrument.Instrument;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.PdfText;
import plantair.testing.Plant;
import plantair.testing.PlantForms;
import plantair.testing.SampleFiles;
import plantair.testing.SentFile;
import plantair.testing.SentForm;

/** The report of a test, as a page and as a PDF. */
abstract class ReportWebTests {

    @Autowired
    private ApplicationContext context;

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    private Plant plant;
    private Compressor compressor;

    @BeforeEach
    void recordATest() {
        database.wipe();
        plant = Plant.in(context);
        compressor = plant.compressor(plant.site("Île Łuk <&>", "America/Chicago"));
        Instrument gauge = plant.gauge("G-1");
        assertThat(PlantForms.certificate("K-77", "2025-12-01").post(site).status())
                .isEqualTo(302);
        plant.plan(compressor)
                .with(gauge)
                .by("Zoë Ångström")
                .notes("Δp ≤ 2 psi · ±0.5 °F − ok × 2")
                .record();
    }

    private byte[] pdf(String address) {
        var response = SentForm.get(site, address).response();
        assertThat(response.getStatus()).isEqualTo(200);
        assertThat(response.getContentType()).isEqualTo("application/pdf");
        return response.getContentAsByteArray();
    }

    /** The figure is that of the page of the test, whose digits are checked elsewhere. */
    @Test
    void saysTheSameOnThePageAndInThePdf() {
        SentFile.of("TEST/1", "gauge.jpg", SampleFiles.jpeg(), "gauge at the stop")
                .send(site);
        String figure = SentForm.get(site, "/tests/1")
                .page()
                .select("dl.result strong")
                .first()
                .text();
        assertThat(figure).matches("34\\.\\d ± \\d\\.\\d cfm");
        String digest =
                SentForm.get(site, "/attachments/1").page().select("code").text();

        for (String text : new String[] {
            SentForm.get(site, "/tests/1/report").text(),
            PdfText.of(pdf("/tests/1/report.pdf")).words()
        }) {
            assertThat(text)
                    .contains("Report of pump-up test 1: C-1, Île Łuk <&>", "Zoë Ångström", figure)
                    .contains("Δp ≤ 2 psi · ±0.5 °F − ok × 2")
                    .contains("no acceptance test to ISO 1217", "no proof that a receiver")
                    .contains("Method PU-1", "M1")
                    .containsPattern(
                            "Line \\d+ of the chain of changes holds this record; the digest of the line is [0-9a-f]{10}")
                    .contains("G-1, pressure gauge", "K-77")
                    .contains("gauge at the stop", "gauge.jpg", "first record", "Tested by", "Reviewed by");
            assertThat(text.replace(" ", "")).contains(digest);
        }
    }

    @Test
    void makesAPdfWithTitleLanguageTagsAndPageNumbers() {
        PdfText file = PdfText.of(pdf("/tests/1/report.pdf"));

        assertThat(file.title()).isEqualTo("Report of pump-up test 1: C-1, Île Łuk <&>");
        assertThat(file.language()).isEqualTo("en");
        assertThat(file.isTagged()).isTrue();
        assertThat(file.words()).contains("1 / " + file.pages(), file.pages() + " / " + file.pages());
    }

    @Test
    void printsOnEitherSheet() {
        assertThat(PdfText.of(pdf("/tests/1/report.pdf")).width())
                .as("US units")
                .isEqualTo(612);
        assertThat(PdfText.of(pdf("/tests/1/report.pdf?size=a4")).width()).isEqualTo(595);
        assertThat(PdfText.of(pdf("/tests/1/report.pdf?size=letter")).width()).isEqualTo(612);
    }

    @Test
    void givesTheSameBytesAtTheSameMoment() {
        assertThat(pdf("/tests/1/report.pdf")).isEqualTo(pdf("/tests/1/report.pdf"));
    }

    @Test
    void tellsTheWholeChainOfCorrections() {
        var first = plant.plan(compressor).on("2026-02-05T14:00:00Z").record();
        var second = plant.plan(compressor)
                .on("2026-02-05T14:00:00Z")
                .runs("61", "61.2", "61.1")
                .supersede(first, "wrong watch");
        plant.plan(compressor)
                .on("2026-02-05T14:00:00Z")
                .runs("61", "61.2", "61.3")
                .supersede(second, "slip of the pen");

        String text = SentForm.get(site, "/tests/" + second.id() + "/report").text();

        assertThat(text).contains("first record", "wrong watch", "slip of the pen", second.id() + ", this report");
    }

    @Test
    void knowsOnlyTestsThatAreThere() {
        assertThat(SentForm.get(site, "/tests/77/report").status()).isEqualTo(404);
        assertThat(SentForm.get(site, "/tests/77/report.pdf").status()).isEqualTo(404);
    }
}

@OnH2
final class ReportOnH2WebTests extends ReportWebTests {}

@OnPostgres
final class ReportOnPostgresWebTests extends ReportWebTests {}
