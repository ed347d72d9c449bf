package plantair.equipment.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.SentForm;

abstract class CompressorWebTests {

    private static final SentForm SCREW = SentForm.to("/compressors")
            .with("site", "1")
            .with("tag", "C-1")
            .with("kind", "SCREW")
            .with("stages", "1")
            .with("drive", "BELT")
            .with("control", "LOAD_UNLOAD")
            .with("motor.power", "30", "[HP]")
            .with("motor.frequency", "60", "Hz")
            .with("loadedHours", "6000", "h")
            .with("ratings[0].pressure", "100", "[psi]")
            .with("ratings[0].flow", "125.0", "[cft_i]/min")
            .with("ratings[0].basis", "STANDARD_14_5PSIA_68F_DRY")
            .with("ratings[1].pressure", "", "[psi]")
            .with("ratings[2].pressure", "8.5", "bar")
            .with("ratings[2].flow", "55", "L/s")
            .with("ratings[2].basis", "INTAKE")
            .with("inService", "true");

    private static final SentForm CHANGE =
            SCREW.at("/compressors/1").with("edit.reason", "plate read").with("edit.version", "0");

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @BeforeEach
    void startWithTwoSites() {
        database.wipe();
        var place = SentForm.to("/sites").with("zone", "UTC").with("elevation", "3", "m");
        place.with("name", "North").post(site);
        place.with("name", "South").post(site);
    }

    @Test
    void registersACompressorWithTheRatingsThatWereTyped() {
        var answer = SCREW.post(site);

        assertThat(answer.redirect()).isEqualTo("/compressors/1");
        assertThat(SentForm.get(site, "/sites/1").text()).contains("C-1 screw");
        var form = SentForm.get(site, "/compressors/1/edit");
        assertThat(form.typed("ratings[0].flow.number")).isEqualTo("125.0");
        assertThat(form.typed("ratings[1].pressure.unit")).isEqualTo("bar");
        assertThat(form.typed("ratings[1].basis")).isEqualTo("INTAKE");
        assertThat(form.typed("ratings[2].flow.number")).isEmpty();
        assertThat(form.page()
                        .select("[name=motor.power.unit] option[selected]")
                        .val())
                .isEqualTo("[HP]");
        assertThat(SentForm.get(site, "/changes")
                        .page()
                        .select("tbody tr")
                        .first()
                        .text())
                .contains("rating: 125.0 cfm at 100 psi gauge, standard: 14.5 psia, 68 °F, dry");
    }

    @ParameterizedTest
    @CsvSource({"0", "5210.5", "8784"})
    void keepsTheLoadedHoursAsTyped(String hours) {
        SCREW.with("loadedHours.number", hours).post(site);

        assertThat(SentForm.get(site, "/compressors/1/edit").typed("loadedHours.number"))
                .isEqualTo(hours);
        assertThat(SentForm.get(site, "/compressors/1").text()).contains("Loaded hours a year " + hours + " h");
        assertThat(SentForm.get(site, "/changes").text()).contains("loaded hours a year: " + hours + " h");
    }

    @Test
    void offersOneMoreRatingPointAndLosesNothing() {
        SCREW.post(site);
        var untidy =
                SCREW.with("tag", "C-2").with("ratings[0].flow.number", "7 5").with("more", "rating");

        for (String address : new String[] {"/compressors", "/compressors/1"}) {
            var answer = untidy.at(address).with("edit.version", "0").post(site);

            assertThat(answer.status()).isEqualTo(200);
            assertThat(answer.typed("tag")).isEqualTo("C-2");
            assertThat(answer.typed("ratings[0].flow.number")).isEqualTo("7 5");
            assertThat(answer.typed("ratings[2].basis")).isEqualTo("INTAKE");
            assertThat(answer.typed("ratings[3].pressure.unit")).isEqualTo("[psi]");
        }
        assertThat(SentForm.get(site, "/sites/1").text()).doesNotContain("C-2");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            site                   | 9      | site              | no such site
            tag                    | ``     | tag               | Type something
            kind                   | ``     | kind              | Choose one
            stages                 | 7      | stages            | from 1 to 6
            drive                  | WIND   | drive             | not in the list
            motor.phases           | 2      | motor.phases      | not in the list
            motor.power.number     | 0      | motor.power       | more than zero
            loadedHours.number     | 8784.5 | loadedHours       | 8784 hours at most
            loadedHours.number     | -1     | loadedHours       | 8784 hours at most
            loadedHours.number     | 1,000  | loadedHours       | has a comma
            loadedHours.unit       | s      | loadedHours       | not a unit of this reading
            motor.frequency.unit   | A      | motor.frequency   | not a unit of this reading
            ratings[0].flow.number | -3     | ratings0.flow     | more than zero
            ratings[1].flow.number | 90     | ratings1.pressure | Type the number
            ratings[1].flow.number | 90     | ratings1.basis    | Choose one
            ratings[2].basis       | ACTUAL | ratings2.basis    | not in the list""")
    void keepsWhatWasTypedAndSavesNothing(String field, String typed, String beside, String message) {
        var answer = SCREW.with(field, typed).post(site);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.error(beside)).contains(message);
        assertThat(answer.typed("ratings[0].pressure.number")).isEqualTo("100");
        assertThat(SentForm.get(site, "/sites/1").text()).contains("No compressor is registered");
    }

    @Test
    void refusesOneRatingPressureTwiceOnOneBasis() {
        var sameNumber =
                SCREW.with("ratings[1].pressure", "100.0", "[psi]").with("ratings[1].flow", "120", "[cft_i]/min");

        var twice =
                sameNumber.with("ratings[1].basis", "STANDARD_14_5PSIA_68F_DRY").post(site);

        assertThat(twice.error("ratings1.pressure")).contains("stands above already");
        assertThat(sameNumber.with("ratings[1].basis", "INTAKE").post(site).status())
                .isEqualTo(302);
    }

    @Test
    void asksAboutABarTypedAsPsi() {
        var slip = SCREW.with("ratings[0].pressure", "7", "[psi]");

        var asked = slip.post(site);

        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.warning("ratings0.pressure")).contains("7 psi is an unusual pressure");
        assertThat(slip.with("confirmed", asked.token()).post(site).status()).isEqualTo(302);
    }

    @Test
    void allowsATagOnceASite() {
        SCREW.post(site);

        assertThat(SCREW.with("tag", "c-1").post(site).error("tag")).contains("has this name already");
        assertThat(SCREW.with("site", "2").post(site).status()).isEqualTo(302);
    }

    @Test
    void retiresWithAReasonAndNeverDeletes() {
        SCREW.post(site);
        var retired = SentForm.to("/compressors/1");
        for (var field : CHANGE.fields().entrySet()) {
            retired = field.getKey().equals("inService") ? retired : retired.with(field.getKey(), field.getValue());
        }

        assertThat(retired.with("edit.reason", "sold").post(site).redirect()).isEqualTo("/compressors/1");

        assertThat(SentForm.get(site, "/sites/1").text()).contains("C-1 screw retired");
        assertThat(SentForm.get(site, "/changes")
                        .page()
                        .select("tbody tr")
                        .first()
                        .text())
                .endsWith("in service: yes in service: no sold");
    }

    @Test
    void countsAChangeOfRatingsAloneAsAChange() {
        SCREW.post(site);

        CHANGE.with("ratings[0].flow.number", "126").post(site);
        var late = CHANGE.with("ratings[0].flow.number", "127").post(site);

        assertThat(late.status()).isEqualTo(409);
        assertThat(late.text()).contains("126 cfm at 100 psi gauge");
        assertThat(late.typed("ratings[0].flow.number")).isEqualTo("127");
    }

    @Test
    void survivesFormsThatNoPageSends() {
        assertThat(SCREW.with("ratings", "1")
                        .with("edit", "2")
                        .with("motor", "3")
                        .post(site)
                        .status())
                .isLessThan(500);
        assertThat(SCREW.with("ratings[5000].basis", "x").post(site).status()).isEqualTo(400);
        assertThat(CHANGE.at("/compressors/9").post(site).status()).isEqualTo(404);
        assertThat(SentForm.get(site, "/compressors/9/edit").status()).isEqualTo(404);
        assertThat(SentForm.get(site, "/compressors/new?site=x").status()).isEqualTo(200);
    }
}

@OnH2
final class CompressorOnH2WebTests extends CompressorWebTests {}

@OnPostgres
final class CompressorOnPostgresWebTests extends CompressorWebTests {}
