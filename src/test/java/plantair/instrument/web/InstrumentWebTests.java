package plantair.instrument.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;

/** Instruments and their calibrations. It is 2026-06-15, noon UTC. */
abstract class InstrumentWebTests {

    private static final SentForm GAUGE = SentForm.to("/instruments")
            .with("kind", "GAUGE")
            .with("tag", "G-1")
            .with("maker", "Bourdon 200")
            .with("span", "200", "[psi]")
            .with("grade", "ASME_A")
            .with("gradePercent", "", "%")
            .with("division", "2", "[psi]")
            .with("intervalMonths", "12")
            .with("inService", "true");

    private static final SentForm THERMOMETER = SentForm.to("/instruments")
            .with("kind", "THERMOMETER")
            .with("tag", "T-1")
            .with("span", "", "[degF]")
            .with("accuracy", "1.5", "[degF]")
            .with("division", "", "[degF]")
            .with("inService", "true");

    private static final SentForm CERTIFICATE = SentForm.to("/instruments/1/calibrations")
            .with("doneOn", "2026-03-01")
            .with("certificateNumber", "K-7")
            .with("laboratory", "Own bench")
            .with("points[0].reading", "175", "[psi]")
            .with("points[0].error", "4", "[psi]")
            .with("points[1].reading", "100", "[psi]")
            .with("points[1].error", "-1.5", "[psi]")
            .with("points[2].reading", "", "[psi]")
            .with("points[2].error", "", "[psi]")
            .with("leftInOrder", "YES");

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @BeforeEach
    void startWithNothing() {
        database.wipe();
    }

    @Test
    void registersAGaugeWithoutACertificate() {
        assertThat(GAUGE.post(site).redirect()).isEqualTo("/instruments/1");

        assertThat(SentForm.get(site, "/instruments").text())
                .contains("G-1 pressure gauge ○ no certificate carried between sites 200 psi Bourdon 200");
        assertThat(SentForm.get(site, "/instruments/1").text())
                .contains("ASME B40.100 grade A: 2, 1, 2 % of span", "12 months", "No calibration is on record");
        assertThat(SentForm.get(site, "/changes").text()).contains("Instrument G-1 new", "grade: asme a");
    }

    @Test
    void offersTheFieldsOfEachKind() {
        var gauge = SentForm.get(site, "/instruments/new").page();
        var timer = SentForm.get(site, "/instruments/new?kind=TIMER").page();

        assertThat(gauge.select("[name=grade] option")).hasSize(17);
        assertThat(gauge.select("[name=accuracy.number]")).isEmpty();
        assertThat(timer.select("[name=grade], [name=span.number]")).isEmpty();
        assertThat(timer.select("[name=accuracy.unit] option").eachText()).containsExactly("s (or m:ss)", "min");
        assertThat(SentForm.get(site, "/instruments/new?kind=SPOON").status()).isEqualTo(404);
    }

    @Test
    void registersAThermometerByItsLargestError() {
        assertThat(THERMOMETER.post(site).status()).isEqualTo(302);

        assertThat(SentForm.get(site, "/instruments/1").text()).contains("± 1.5 °F", "thermometer");
        assertThat(THERMOMETER.with("accuracy.unit", "[psi]").post(site).error("accuracy"))
                .contains("not a unit of this reading");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            tag                 | ``    | tag            | Type something
            span.number         | ``    | span           | Type the number
            span.unit           | s     | span           | not a unit of this reading
            grade               | ``    | grade          | Choose one
            grade               | OTHER | gradePercent   | Type the number
            gradePercent.number | 2     | gradePercent   | says the percent already
            division.number     | 0     | division       | more than zero
            division.number     | 200   | division       | smaller than the span
            intervalMonths      | 0     | intervalMonths | from 1 to 120
            site                | 7     | site           | no such site
            site                | x     | site           | not in the list""")
    void keepsWhatWasTypedOfAGauge(String field, String typed, String beside, String message) {
        var answer = GAUGE.with(field, typed).post(site);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.error(beside)).contains(message);
        assertThat(answer.typed("maker")).isEqualTo("Bourdon 200");
        assertThat(SentForm.get(site, "/instruments").text()).contains("No instrument is registered");
    }

    @Test
    void takesAGaugeOutsideTheGradesByItsPercent() {
        var other = GAUGE.with("grade", "OTHER");

        assertThat(other.with("gradePercent.number", "26").post(site).error("gradePercent"))
                .contains("25 %");
        other.with("gradePercent.number", "3.5").post(site);

        assertThat(SentForm.get(site, "/instruments/1").text()).contains("3.5 % of span, typed");
    }

    @Test
    void refusesATagTwiceAndAChangeWithoutReason() {
        GAUGE.post(site);
        var change = GAUGE.at("/instruments/1").with("edit.version", "0").with("inService", "");

        assertThat(GAUGE.with("tag", "g-1").post(site).error("tag")).contains("has this name already");
        assertThat(change.post(site).error("edit.reason")).contains("Type something");
        assertThat(change.with("edit.reason", "dropped").post(site).redirect()).isEqualTo("/instruments/1");
        assertThat(SentForm.get(site, "/instruments").text()).contains("retired");
        assertThat(change.with("edit.reason", "late").post(site).status()).isEqualTo(409);
    }

    @Test
    void isKeptAtASiteAndMovesWithAReason() {
        PlantForms.SITE.post(site);
        PlantForms.SITE.with("name", "South works").post(site);
        GAUGE.with("site", "1").post(site);
        var move = GAUGE.at("/instruments/1").with("edit.version", "0").with("edit.reason", "lent");

        assertThat(SentForm.get(site, "/instruments").text()).contains("no certificate North works 200 psi");
        assertThat(SentForm.get(site, "/instruments/1/edit").typed("site")).isEqualTo("1");
        assertThat(move.with("site", "1").post(site).text()).contains("Nothing here differs");
        move.with("site", "2").post(site);
        assertThat(SentForm.get(site, "/instruments/1").text()).contains("Kept at South works");
        move.with("edit.version", "1").with("site", "").post(site);
        assertThat(SentForm.get(site, "/instruments/1").text()).contains("Kept at carried between sites");
        assertThat(SentForm.get(site, "/changes").text())
                .contains("kept at: North works", "kept at: South works", "lent");
    }

    @Test
    void neverChangesWhatAnInstrumentMeasures() {
        GAUGE.post(site);

        GAUGE.at("/instruments/1")
                .with("edit.version", "0")
                .with("edit.reason", "slip")
                .with("kind", "TIMER")
                .with("division.number", "1")
                .post(site);

        assertThat(SentForm.get(site, "/instruments/1").text()).contains("pressure gauge", "1 psi");
    }

    @Test
    void recordsACalibrationAndPointsAtTheTestsTouchedByIt() {
        GAUGE.post(site);

        assertThat(sent(CERTIFICATE).post(site).redirect()).isEqualTo("/instruments/1");

        var page = SentForm.get(site, "/instruments/1");
        assertThat(page.text())
                .contains("● in date", "Due 2027-03-01", "175 psi: reads 4 psi high", "100 psi: reads 1.5 psi low");
        assertThat(page.page().select("a[href=/calibrations/1/impact]")).hasSize(1);
        assertThat(SentForm.get(site, "/instruments").text()).contains("● in date 2027-03-01");
    }

    @Test
    void namesNoTestsWhereNothingWasFoundWrong() {
        GAUGE.post(site);
        sent(CERTIFICATE)
                .with("points[0].error.number", "0")
                .with("points[1].error.number", "0.0")
                .post(site);

        var page = SentForm.get(site, "/instruments/1");
        assertThat(page.text()).contains("175 psi: right", "100 psi: right");
        assertThat(page.page().select("a[href=/calibrations/1/impact]")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            2026-07-16, YES, ● in date
            2026-07-15, YES, ▲ due soon
            2026-06-15, YES, ▲ due soon
            2026-06-14, YES, ■ overdue
            2027-03-01, NO,  ■ left out of order""")
    void tellsTheStatusByWordAndShape(String dueOn, String inOrder, String status) {
        GAUGE.post(site);
        sent(CERTIFICATE).with("dueOn", dueOn).with("leftInOrder", inOrder).post(site);

        assertThat(SentForm.get(site, "/instruments").text()).contains(status);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            doneOn                   | 2026-06-17 | doneOn          | still to come
            doneOn                   | 2026-02-30 | doneOn          | not a date
            dueOn                    | 2026-03-01 | dueOn           | not after the calibration
            dueOn                    | 2206-03-01 | dueOn           | more than ten years
            laboratory               | ``         | laboratory      | Type something
            leftInOrder              | ``         | leftInOrder     | Choose one
            points[0].error.number   | ``         | points0.error   | Type the number
            points[1].reading.number | 175.0      | points1.reading | stands above already
            points[1].reading.unit   | s          | points1.reading | not a unit""")
    void keepsWhatWasTypedOfACalibration(String field, String typed, String beside, String message) {
        GAUGE.post(site);

        var answer = sent(CERTIFICATE).with(field, typed).post(site);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.error(beside)).contains(message);
        assertThat(answer.typed("certificateNumber")).isEqualTo("K-7");
        assertThat(SentForm.get(site, "/instruments/1").text()).contains("No calibration is on record");
    }

    @Test
    void asksAboutAnErrorThatLooksLikeTheTrueValue() {
        GAUGE.post(site);
        var odd = sent(CERTIFICATE).with("points[0].error.number", "171");

        var asked = odd.post(site);

        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.warning("points0.error")).contains("Is it the true value");
        assertThat(odd.with("confirmed", asked.token()).post(site).status()).isEqualTo(302);
    }

    @Test
    void needsADueDateWhereThePlantHasNoInterval() {
        GAUGE.with("intervalMonths", "").post(site);

        assertThat(sent(CERTIFICATE).post(site).error("dueOn")).contains("no calibration interval");
    }

    @Test
    void addsAPointWithoutSavingOrChecking() {
        GAUGE.post(site);

        var answer =
                sent(CERTIFICATE).with("laboratory", "").with("more", "point").post(site);

        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.page().select("[name$=.error.number]")).hasSize(4);
        assertThat(answer.typed("points[0].error.number")).isEqualTo("4");
    }

    @Test
    void correctsACalibrationByAnotherThatTakesItsPlace() {
        GAUGE.post(site);
        sent(CERTIFICATE).with("doneOn", "2025-03-01").post(site);
        String address = "/instruments/1/calibrations/1/supersede";
        var correction = sent(CERTIFICATE.at(address));

        assertThat(SentForm.get(site, address).typed("doneOn")).isEqualTo("2025-03-01");
        assertThat(correction.post(site).error("edit.reason")).contains("Type something");
        assertThat(correction.with("edit.reason", "year misread").post(site).redirect())
                .isEqualTo("/instruments/1");

        assertThat(SentForm.get(site, "/instruments/1").text())
                .contains("2026-03-01", "2025-03-01 superseded", "In place of an earlier entry: year misread");
        assertThat(SentForm.get(site, "/changes").text()).contains("superseded by calibration 2 of 2026-03-01");
        assertThat(SentForm.get(site, address).redirect()).isEqualTo("/instruments/1");
        assertThat(sent(correction).with("edit.reason", "again").post(site).status())
                .isEqualTo(409);
    }

    @Test
    void knowsNoCalibrationUnderAnotherInstrument() {
        GAUGE.post(site);
        THERMOMETER.post(site);
        sent(CERTIFICATE).post(site);

        assertThat(SentForm.get(site, "/instruments/2/calibrations/1/supersede").status())
                .isEqualTo(404);
        assertThat(SentForm.get(site, "/instruments/9").status()).isEqualTo(404);
        assertThat(SentForm.get(site, "/instruments/9/calibrations/new").status())
                .isEqualTo(404);
    }

    private static SentForm sent(SentForm form) {
        return form.with("submission", UUID.randomUUID().toString());
    }
}

@OnH2
final class InstrumentOnH2WebTests extends InstrumentWebTests {}

@OnPostgres
final class InstrumentOnPostgresWebTests extends InstrumentWebTests {}
