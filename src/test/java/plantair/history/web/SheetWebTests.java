package plantair.history.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.PdfText;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;

/** The run sheet of a machine, as a page and as a PDF. */
abstract class SheetWebTests {

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @BeforeEach
    void registerAMachine() {
        database.wipe();
        send(PlantForms.SITE, PlantForms.COMPRESSOR, PlantForms.RECEIVER, PlantForms.PIPE, PlantForms.GAUGE);
    }

    private void send(SentForm... forms) {
        for (SentForm form : forms) {
            assertThat(form.post(site).status()).as(form.address()).isEqualTo(302);
        }
    }

    private void test() {
        send(
                PlantForms.certificate("K-1", "2026-01-02"),
                PlantForms.pumpUp("2026-03-02", "60.2", "60.8", "60.5").with("gauge", "1"));
    }

    private PdfText pdf(String address) {
        var response = SentForm.get(site, address).response();
        assertThat(response.getStatus()).isEqualTo(200);
        assertThat(response.getHeader("Content-Disposition")).startsWith("attachment; filename=");
        return PdfText.of(response.getContentAsByteArray());
    }

    /** 60.5 s is the middle of the three times; 60.5 / 0.95 = 63.7 s, / 0.90 = 67.2 s, / 0.80 = 75.6 s, whole seconds. */
    @Test
    void holdsTheNumbersOfTheMachineOnThePageAndInThePdf() {
        test();

        for (String text : new String[] {
            SentForm.get(site, "/compressors/1/sheet").text(),
            pdf("/compressors/1/sheet.pdf").words()
        }) {
            assertThat(text)
                    .contains("C-1", "North works", "piston", "35 cfm / 175 psi")
                    .contains("R-1 (120 US gal), P-1 (2.1 US gal)", "122.1 US gal", "200.0 psig", "R-1: 200 psi")
                    .contains("from 140.0 psi to 172.0 psi", "G-1, calibrated until 2027-01-02")
                    .contains("60.5 s as in the baseline test 2026-03-02", "63 s or longer: watch (95 %")
                    .contains("67 s or longer: plan (90 %", "75 s or longer: act (80 %")
                    .contains("/guided?tag=C-1", "Printed 2026-06-15");
        }
    }

    /** Each caution of the procedure, by a word of it, in the order of the steps. */
    @Test
    void saysEachCautionAtItsStep() {
        test();

        String text = pdf("/compressors/1/sheet.pdf").words();

        assertThat(text)
                .containsSubsequence(
                        "start by itself",
                        "two people",
                        "bleed to zero",
                        "STOP and call the inspector",
                        "Never weld",
                        "Crack the drain slowly",
                        "BREATHING AIR",
                        "neighbour",
                        "Static hold",
                        "Never above the MAWP",
                        "do not touch the vessel",
                        "hissing",
                        "Open the valve slowly",
                        "o acceptance test",
                        "no proof that anything is safe");
    }

    @Test
    void fitsOnTwoSheetsOfEitherSize() {
        String longest = "x".repeat(40);
        send(PlantForms.COMPRESSOR.with("tag", "C-2").with("makerModel", longest + " " + longest));
        test();
        for (String machine : new String[] {"1", "2"}) {
            assertThat(pdf("/compressors/" + machine + "/sheet.pdf?size=a4"))
                    .satisfies(file -> assertThat(file.pages()).isEqualTo(2))
                    .satisfies(file -> assertThat(file.width()).isEqualTo(595));
            assertThat(pdf("/compressors/" + machine + "/sheet.pdf?size=letter"))
                    .satisfies(file -> assertThat(file.pages()).isEqualTo(2))
                    .satisfies(file -> assertThat(file.width()).isEqualTo(612));
        }
    }

    @Test
    void leavesBlanksWhereNoTestTells() {
        String text = SentForm.get(site, "/compressors/1/sheet").text();

        assertThat(text).contains("No test yet: choose two marks", "No card for this machine yet");
        assertThat(pdf("/compressors/1/sheet.pdf").title()).isEqualTo("Run sheet: C-1, North works");
    }

    @Test
    void asksWhatTheKindOfMachineHas() {
        send(PlantForms.COMPRESSOR
                .with("tag", "S-1")
                .with("kind", "SCREW")
                .with("stages", "1")
                .with("drive", "DIRECT"));

        assertThat(SentForm.get(site, "/compressors/1/sheet").text())
                .contains("between the stages", "Belt")
                .doesNotContain("separator", "Hours loaded");
        assertThat(SentForm.get(site, "/compressors/2/sheet").text())
                .contains("separator", "Hours loaded")
                .doesNotContain("between the stages", "Belt,");
    }

    @Test
    void saysWhenAGaugeIsPastItsDate() {
        send(
                PlantForms.certificate("K-1", "2024-01-02"),
                PlantForms.pumpUp("2024-03-02", "60.2", "60.8", "60.5").with("gauge", "1"));

        assertThat(SentForm.get(site, "/compressors/1/sheet").text()).contains("G-1, PAST ITS DATE (2025-01-02)");
    }

    /** In the PDF too: what the font does not have comes out as #. */
    @Test
    void drawsTheCodeWithTheAddressBesideIt() {
        test();
        var page = SentForm.get(site, "/compressors/1/sheet").page();

        assertThat(page.select("svg.qr path")).hasSize(1);
        assertThat(page.select("svg.qr").attr("aria-label")).endsWith("/guided?tag=C-1");
        assertThat(page.select("style, [style]")).isEmpty();
        assertThat(page.select(".notice").text()).contains("leads to this computer only");
        assertThat(pdf("/compressors/1/sheet.pdf").words()).doesNotContain("#");
    }

    @Test
    void knowsOnlyMachinesThatAreThere() {
        List.of("sheet", "sheet.pdf", "label", "label.pdf")
                .forEach(what -> assertThat(
                                SentForm.get(site, "/compressors/77/" + what).status())
                        .as(what)
                        .isEqualTo(404));
    }

    @Test
    void printsLabelsOfAllInService() {
        send(PlantForms.COMPRESSOR.with("tag", "Ä 2/3?").with("site", "1"), PlantForms.RECEIVER.with("tag", "R-9"));

        String page = SentForm.get(site, "/sites/1/labels").text();
        PdfText file = pdf("/sites/1/labels.pdf");

        for (String text : new String[] {page, file.words()}) {
            assertThat(text)
                    .contains("C-1", "Ä 2/3?", "R-1", "R-9", "North works")
                    .contains("/guided?tag=C-1", "/receivers/2");
            assertThat(text.replace(" ", "")).contains("/guided?tag=%C3%84%202%2F3%3F");
        }
        assertThat(SentForm.get(site, "/compressors/1/label").text())
                .contains("C-1")
                .doesNotContain("R-1");
        assertThat(pdf("/compressors/1/label.pdf").title()).isEqualTo("Label of C-1");
        assertThat(SentForm.get(site, "/sites/77/labels").status()).isEqualTo(404);
    }
}

@OnH2
final class SheetOnH2WebTests extends SheetWebTests {}

@OnPostgres
final class SheetOnPostgresWebTests extends SheetWebTests {}
