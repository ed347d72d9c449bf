package plantair.testrecord.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.UnaryOperator;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.Plant;

/** A test from the form to the page, over everything between, on both databases. */
abstract class RecordingTests {

    @Autowired
    private MockMvcTester mvc;

    @Autowired
    private Database database;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private ApplicationContext context;

    @BeforeEach
    void plantWithOneMachine() {
        database.wipe();
        Plant plant = Plant.in(context);
        var site = plant.site();
        plant.compressor(site);
        plant.receiver(site);
    }

    private MvcTestResult post(String path, TestFormParameters form) {
        return mvc.post().uri(path).params(form.parameters()).exchange();
    }

    private MvcTestResult save(UnaryOperator<TestFormParameters> change) {
        return post("/compressors/1/tests", change.apply(TestFormParameters.sound()));
    }

    private static Document page(MvcTestResult result) {
        try {
            return Jsoup.parse(result.getResponse().getContentAsString());
        } catch (java.io.UnsupportedEncodingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private long rows(String table) {
        return jdbc.queryForObject("select count(*) from " + table, Long.class);
    }

    private void nothingIsSaved() {
        assertThat(rows("pump_up_test")).isZero();
        assertThat(rows("pump_up_run")).isZero();
        assertThat(rows("pump_up_result")).isZero();
    }

    @Test
    void keepsEveryReadingAsTyped() {
        assertThat(save(form -> form)).hasStatus(302).hasRedirectedUrl("/tests/1");

        assertThat(jdbc.queryForList("select elapsed from pump_up_run order by position", String.class))
                .containsExactly("1:02.2 m:ss", "62.8 s", "62.5 s");
        assertThat(jdbc.queryForObject("select barometer from pump_up_test", String.class))
                .isEqualTo("29.4 [in_i'Hg]");
        Document page = page(mvc.get().uri("/tests/1").exchange());
        assertThat(page.select("main").text())
                .contains("1:02.2 (m:ss)", "29.4 inHg", "Ilse Øberg", "Second stage valve ticks.");
    }

    @Test
    void showsTheResultWithUnitAndBasisAndTheWorking() {
        save(form -> form);

        Document page = page(mvc.get().uri("/tests/1").exchange());

        assertThat(page.select("dl.result").text())
                .contains("Free air delivered", "cfm", "at the conditions of the intake")
                .contains("Of the rating", "this test is the baseline");
        assertThat(page.select("dl.working").text()).contains("M1", "M7", "M11", "M13", "16.0417 ft³");
    }

    @Test
    void takesAFormSentTwiceAsOneTest() {
        TestFormParameters form = TestFormParameters.sound();

        post("/compressors/1/tests", form);
        MvcTestResult again = post("/compressors/1/tests", form);

        assertThat(again).hasRedirectedUrl("/tests/1");
        assertThat(rows("pump_up_test")).isEqualTo(1);
    }

    @Test
    void addsARunWithoutLosingWhatWasTyped() {
        MvcTestResult result = save(form -> form.with("action", "add-run").with("date", "nonsense"));

        assertThat(result).hasStatus(200);
        Document page = page(result);
        assertThat(page.select("fieldset.run")).hasSize(4);
        assertThat(page.getElementById("date").val()).isEqualTo("nonsense");
        assertThat(page.getElementById("runs0.elapsed.number").val()).isEqualTo("1:02.2");
        nothingIsSaved();
    }

    @ParameterizedTest(name = "{0} = {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    runs[0].stopPressure.number | 140.0    | not above
                    runs[0].stopPressure.number | 90       | not above
                    runs[0].startPressure.number| -15      | open air
                    runs[1].elapsed.number      | 0        | more than zero
                    runs[1].elapsed.number      | -62      | more than zero
                    runs[1].elapsed.number      | 1:75     | minutes and seconds
                    runs[2].startPressure.number| 7 5      | blank inside
                    runs[2].startPressure.number| 1e999    | power of ten
                    runs[2].startPressure.number| 7,05     | comma
                    runs[2].startPressure.number| abc      | not a number
                    runs[2].startPressure.number| ``       | Type the number
                    runs[2].startPressure.unit  | furlong  | not a unit
                    runs[2].startPressure.unit  | [degF]   | not a unit
                    runs[0].stopAir.number      | 700      | cannot be air in a receiver
                    runs[0].stopAir.number      | ``       | Type the number
                    intakeTemperature.number    | 297      | cannot be intake air
                    intakeTemperature.number    | -500     | cannot be intake air
                    intakeHumidity.number       | 101      | from 0 to 100
                    barometer.number            | 14.4     | cannot be a station pressure
                    water.number                | 500      | fill the receivers
                    water.number                | 0        | more than zero
                    speed.number                | 0        | more than zero
                    date                        | 2031-01-01 | in the future
                    date                        | 12/05/2026 | is not a date
                    date                        | 2026-02-30 | is not a date
                    time                        | 25:00    | is not a time
                    tester                      | ``       | who read the gauge
                    receivers                   | 999      | not in the register of this site
                    receivers                   | x        | not in the register of this site
                    airTemperature              | GUESSED  | not
                    """)
    void refusesWhatCannotBeTrueBesideItsField(String field, String typed, String message) {
        MvcTestResult result = save(form -> form.with(field, typed));

        assertThat(result).hasStatus(422);
        Document page = page(result);
        String id = field.replaceAll("[\\[\\]]", "").replaceAll("\\.(number|unit)$", "");
        var note = page.getElementById(id + "-error");
        assertThat(note).as("message beside " + id).isNotNull();
        assertThat(note.text()).contains(message);
        var control = page.getElementById(field.replaceAll("[\\[\\]]", ""));
        if (control.is("input[type=text],input[type=date],input[type=time]")) {
            assertThat(control.val()).isEqualTo(typed);
        }
        assertThat(page.getElementById("runs0.elapsed.number").val()).isNotEmpty();
        nothingIsSaved();
    }

    @Test
    void refusesMoreRunsThanATestHolds() {
        MvcTestResult result = save(form -> {
            for (int run = 0; run < 13; run++) {
                form.run(run, "140.0", "172.0", "62.5");
            }
            return form;
        });

        assertThat(result).hasStatus(422);
        assertThat(page(result).getElementById("errors").text()).contains("No more than 12 runs");
        nothingIsSaved();
    }

    @Test
    void learnsTheWarmingFactorFromSettledReadings() {
        for (String month : new String[] {"01", "02", "03"}) {
            assertThat(save(form -> settled(form).with("date", "2026-" + month + "-12")))
                    .hasStatus(302);
        }

        assertThat(save(form -> form.with("airTemperature", "NOT_MEASURED"))).hasStatus(302);

        Document page = page(mvc.get().uri("/tests/4").exchange());
        assertThat(page.select("ul.findings").text()).contains("which this machine itself showed in 3 earlier tests");
        assertThat(page.select("dl.working").text()).contains("Air not measured: q / F");
    }

    /** Settles from 172 to 168 psig at the temperature of the intake. */
    private static TestFormParameters settled(TestFormParameters form) {
        form.with("airTemperature", "SETTLED");
        for (int run = 0; run < 3; run++) {
            String path = "runs[" + run + "].";
            form.reading(path + "startAir", "", "[degF]")
                    .reading(path + "stopAir", "", "[degF]")
                    .reading(path + "settledPressure", "168.0", "[psi]")
                    .reading(path + "settledAir", "76", "[degF]")
                    .reading(path + "settledWait", "10", "min");
        }
        return form;
    }

    @Test
    void refusesNotesThatAreTooLongAndKeepsThem() {
        MvcTestResult result = save(form -> form.with("notes", "x".repeat(10_000)));

        assertThat(result).hasStatus(422);
        assertThat(page(result).getElementById("notes").val()).hasSize(10_000);
        assertThat(page(result).getElementById("notes-error").text()).contains("10000", "4000");
        nothingIsSaved();
    }

    @Test
    void refusesAReceiverOfAnotherSite() {
        Plant plant = Plant.in(context);
        plant.receiver(plant.site("South works", "Europe/Oslo"));

        MvcTestResult result = save(form -> form.with("receivers", "2"));

        assertThat(result).hasStatus(422);
        assertThat(page(result).getElementById("receivers-error").text()).contains("this site");
        nothingIsSaved();
    }

    @ParameterizedTest(name = "{0} = {1} {2}")
    @CsvSource(delimiter = '|', textBlock = """
                    barometer             | 30.9 | [in_i'Hg] | reduced to sea level
                    runs[0].elapsed       | 1.04 | s         | minutes for seconds
                    runs[0].elapsed       | 62.2 | min       | minutes for seconds
                    runs[0].elapsed       | 400  | s         | far from the expected
                    intakeTemperature     | 55   | Cel       | is the scale right
                    runs[0].stopAir       | 190  | [degF]    | is the scale right
                    runs[0].stopPressure  | 205  | [psi]     | maximum allowable working pressure
                    """)
    void asksOnceWhatMayBeTrueAndThenSavesIt(String reading, String number, String unit, String message) {
        TestFormParameters form = TestFormParameters.sound().reading(reading, number, unit);

        MvcTestResult asked = post("/compressors/1/tests", form);

        assertThat(asked).hasStatus(422);
        Document page = page(asked);
        assertThat(page.getElementById(reading.replaceAll("[\\[\\]]", "") + "-warning")
                        .text())
                .contains(message);
        nothingIsSaved();
        form.with("confirmed", page.getElementById("confirmed").val());
        assertThat(post("/compressors/1/tests", form)).hasStatus(302);
        assertThat(page(mvc.get().uri("/tests/1").exchange()).select("main").text())
                .contains("Unusual readings that were confirmed");
    }

    /** A tick from before a reading was put right, or words of a form made by hand. */
    @Test
    void keepsNoConfirmationOfWhatIsNotUnlikely() {
        assertThat(save(form -> form.with("confirmed", "=1+1"))).hasStatus(302);

        assertThat(jdbc.queryForObject("select confirmed from pump_up_test", String.class))
                .isEmpty();
    }

    @Test
    void asksWhetherBarWasTypedAsPsiAgainstTheMachinesHistory() {
        save(form -> form);

        MvcTestResult asked = save(form -> form.run(0, "9.65", "11.86", "62.2")
                .run(1, "9.65", "11.86", "62.8")
                .run(2, "9.65", "11.86", "62.5"));

        assertThat(asked).hasStatus(422);
        assertThat(page(asked).getElementById("runs0.stopPressure-warning").text())
                .contains("14.5 times", "bar for psi");
        assertThat(rows("pump_up_test")).isEqualTo(1);
    }

    @Test
    void challengesASeaLevelBarometerAtAltitude() {
        jdbc.update("update site set elevation = '1600 m'");

        MvcTestResult asked = save(form -> form.reading("barometer", "29.92", "[in_i'Hg]"));

        assertThat(asked).hasStatus(422);
        assertThat(page(asked).getElementById("barometer-warning").text()).contains("29.92", "reduced to sea level");
        nothingIsSaved();
    }

    @Test
    void warnsOfAReceiverWhoseCertificateHasRunOut() {
        jdbc.update("update receiver set certificate_due = date '2026-05-01'");

        MvcTestResult asked = save(form -> form);

        assertThat(asked).hasStatus(422);
        assertThat(page(asked).getElementById("receivers-warning").text())
                .contains("ran out on", "Have it inspected first");
    }

    @Test
    void supersedesATestAndKeepsTheOldOneReadable() {
        save(form -> form);
        Document form = page(mvc.get().uri("/tests/1/supersede").exchange());
        assertThat(form.getElementById("runs0.elapsed.number").val()).isEqualTo("1:02.2");

        MvcTestResult result = post(
                "/tests/1/supersede",
                TestFormParameters.sound().run(1, "140.0", "172.0", "62.3").with("reason", "Misread the watch"));

        assertThat(result).hasStatus(302).hasRedirectedUrl("/tests/2");
        assertThat(page(mvc.get().uri("/tests/1").exchange()).select("main").text())
                .contains("superseded", "Misread the watch", "62.8 s");
        assertThat(page(mvc.get().uri("/tests/2").exchange()).select("main").text())
                .contains("takes the place of test 1", "62.3 s", "Ann (ann)");
        assertThat(jdbc.queryForList("select current_record from pump_up_result order by test_id", Boolean.class))
                .containsExactly(false, true);
        assertThat(mvc.get().uri("/tests/1/supersede").exchange()).hasRedirectedUrl("/tests/2");
    }

    @Test
    void refusesACorrectionWithoutReason() {
        save(form -> form);

        MvcTestResult result = post("/tests/1/supersede", TestFormParameters.sound());

        assertThat(result).hasStatus(422);
        assertThat(page(result).getElementById("reason-error").text()).contains("why");
        assertThat(rows("pump_up_test")).isEqualTo(1);
    }

    @Test
    void refusesASecondCorrectionOfTheSameTest() {
        save(form -> form);
        UnaryOperator<TestFormParameters> why = form -> form.with("reason", "Wrong gauge");
        post("/tests/1/supersede", why.apply(TestFormParameters.sound()));

        MvcTestResult second = post("/tests/1/supersede", why.apply(TestFormParameters.sound()));

        assertThat(second).hasStatus(409);
        assertThat(rows("pump_up_test")).isEqualTo(2);
    }

    @Test
    void answersUnknownTestsAndMachinesWithNotFound() {
        assertThat(mvc.get().uri("/tests/77").exchange()).hasStatus(404);
        assertThat(mvc.get().uri("/compressors/77/tests/new").exchange()).hasStatus(404);
        assertThat(post("/compressors/77/tests", TestFormParameters.sound())).hasStatus(404);
        assertThat(post("/tests/77/supersede", TestFormParameters.sound())).hasStatus(404);
    }

    @Test
    void showsARecordedTestInEveryUnitSet() {
        save(form -> form);

        for (var units : plantair.web.UnitSet.values()) {
            MvcTestResult result = mvc.get()
                    .uri("/tests/1")
                    .cookie(new jakarta.servlet.http.Cookie("units", units.name()))
                    .exchange();
            assertThat(result).hasStatus(200);
            assertThat(page(result).select("dl.result").text())
                    .contains(units.flow().symbol());
        }
    }
}

@OnH2
final class RecordingOnH2Tests extends RecordingTests {}

@OnPostgres
final class RecordingOnPostgresTests extends RecordingTests {}
