package plantair.guided.web;

import static org.assertj.core.api.Assertions.assertThat;
import static plantair.guided.web.GuidedForms.guided;
import static plantair.testing.PlantForms.COMPRESSOR;
import static plantair.testing.PlantForms.GAUGE;
import static plantair.testing.PlantForms.PIPE;
import static plantair.testing.PlantForms.RECEIVER;
import static plantair.testing.PlantForms.SITE;
import static plantair.testing.PlantForms.certificate;

import java.io.UnsupportedEncodingException;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.account.Role;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.People;
import plantair.testing.SentForm;

/** The guided test over its pages, without script. */
abstract class GuidedWebTests {

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @Autowired
    private JdbcTemplate jdbc;

    @BeforeEach
    void aPlant() {
        database.wipe();
        for (SentForm form : List.of(SITE, COMPRESSOR, RECEIVER, PIPE)) {
            assertThat(form.post(site).status()).isEqualTo(302);
        }
    }

    private static String body(SentForm.Answer answer) {
        try {
            return answer.response().getContentAsString();
        } catch (UnsupportedEncodingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private int count(String table) {
        return jdbc.queryForObject("select count(*) from " + table, Integer.class);
    }

    @Test
    void recordsTheTestWithWhatWasTickedTimedAndRead() {
        var answer = guided("2026-06-02", "60.2", "60.8", "60.5").post(site);

        assertThat(answer.redirect()).isEqualTo("/tests/1");
        var page = SentForm.get(site, "/tests/1").page();
        assertThat(page.select("#guide-log").text())
                .contains("tag read: c-1", "ticked: VESSEL_SOUND, VALVE_SHUT", "run 1 start", "1.5 US gal");
        assertThat(page.select("#device-at").text()).isEqualTo("2026-06-15 06:56:00"); // Chicago
        assertThat(page.select("#server-at").text()).isEqualTo("2026-06-15 07:00:00");
        assertThat(page.select("#device-offset").text()).isEqualTo("4 min 0 s slow when it was sent");
        assertThat(page.select("main").text()).contains("12034 h", "27.5 A", "38 psi", "slack or dusty", "=squeal");
    }

    /** 122.1 US gal, 10 psi, 18.8 s, 14.5 psia: 122.1/7.48052 × 10/14.5 × 60/18.8 = 35.93 cfm (M1 by hand). */
    @Test
    void showsTheFreeAirOfEachPieceBetweenMarks() {
        guided("2026-06-02", "60.2", "60.8", "60.5").post(site);

        var table = SentForm.get(site, "/tests/1").page().select("[aria-labelledby=laps-1] tbody tr");
        assertThat(table).hasSize(3);
        assertThat(table.get(0).text()).contains("150", "18.8 s", "35.93 cfm");
        assertThat(table.get(2).text()).contains("172");
    }

    @Test
    void recordsOnceWhateverIsSentAgain() {
        SentForm form = guided("2026-06-02", "60.2", "60.8", "60.5");

        form.post(site);
        var again = form.with("deviceOffsetMs", "-17").post(site);

        assertThat(again.redirect()).isEqualTo("/tests/1");
        assertThat(body(form.at("/guided/1/send").post(site))).contains("RECORDED", "/tests/1");
        assertThat(count("pump_up_test")).isEqualTo(1);
        assertThat(count("machine_readings")).isEqualTo(1);
    }

    @Test
    void keepsBothWhenAnotherVersionWasRecordedFirst() {
        SentForm form = guided("2026-06-02", "60.2", "60.8", "60.5");

        form.post(site);
        var other = form.with("notes", "typed on the phone").post(site);

        assertThat(other.redirect()).startsWith("/guided/drafts/");
        var page = SentForm.get(site, other.redirect());
        assertThat(page.text()).contains("typed on the phone", "on record already as test 1");
        assertThat(count("pump_up_test")).isEqualTo(1);
    }

    @Test
    void showsAClashToAPersonAndOverwritesNothing() {
        SentForm begun = guided("2026-06-02", "60.2", "60.8", "60.5").at("/guided/1/draft");
        assertThat(body(begun.post(site))).contains("\"FITS\"", "\"version\":1");
        SentForm onPc = begun.with("draftVersion", "1").with("notes", "from the desk");
        assertThat(body(onPc.post(site))).contains("\"FITS\"", "\"version\":2");

        SentForm phone = begun.with("draftVersion", "1")
                .with("notes", "from the phone")
                .with("afterStop", "HISSES")
                .with("runs[0].startPressure", "9.7", "bar");
        assertThat(body(phone.post(site))).contains("\"CLASHES\"");
        assertThat(body(phone.at("/guided/1/send").post(site))).contains("\"CLASH\"");
        String key = begun.fields().get("submission");
        var page = SentForm.get(site, "/guided/drafts/" + key);

        assertThat(page.page().select("#versions tbody tr").eachText())
                .contains("Notes from the desk from the phone", "Run 1: Start pressure 140.0 psi 9.7 bar")
                .anySatisfy(row -> assertThat(row).startsWith("What was heard").endsWith("a hiss that goes on"))
                .hasSize(3);
        assertThat(count("pump_up_test")).isZero();

        var chosen = SentForm.to("/guided/drafts/" + key).with("place", "1").post(site);
        assertThat(chosen.redirect()).isEqualTo("/guided/1?draft=" + key + "&chosen=true");
        var form = SentForm.get(site, chosen.redirect());
        assertThat(form.page().select("[name=notes]").text()).isEqualTo("from the phone");
        assertThat(form.typed("runs[0].elapsed.number")).isEqualTo("60.2");
        assertThat(jdbc.queryForList("select content from test_draft", String.class))
                .anyMatch(content -> content.contains("from+the+desk"));
        assertThat(body(phone.at("/guided/1/send").post(site))).contains("\"RECORDED\"");
        assertThat(count("pump_up_test")).isEqualTo(1);
    }

    /** The answer to a copy was lost: the browser does not know the version that it made itself. */
    @Test
    void takesALaterCopyOfTheSameBrowserForNoClash() {
        SentForm begun = guided("2026-06-02", "60.2")
                .at("/guided/1/draft")
                .with("writer", "7d5a61d8-3b4c-4a1d-9e0f-5f6a7b8c9d01");
        begun.post(site);
        begun.with("draftVersion", "1").with("notes", "second").post(site);

        var late = begun.with("draftVersion", "1").with("notes", "third").post(site);

        assertThat(body(late)).contains("\"FITS\"", "\"version\":3");
        assertThat(count("test_draft")).isEqualTo(1);
    }

    @Test
    void showsNobodyTheFormsOfOthers() {
        SentForm begun = guided("2026-06-02", "60.2").at("/guided/1/draft");
        begun.post(site);

        var other = People.of(Role.TECHNICIAN);

        assertThat(SentForm.get(site, "/guided/drafts/" + begun.fields().get("submission"), other)
                        .status())
                .isEqualTo(404);
        assertThat(begun.post(site, other).status()).isEqualTo(404);
        assertThat(SentForm.get(site, "/guided", other).text()).doesNotContain("kept on the server");
        assertThat(SentForm.get(site, "/guided").text()).contains("kept on the server", "a phone");
    }

    @Test
    void saysBesideItsFieldWhatItCannotRead() {
        var answer = guided("2026-06-02", "60.2", "60.8", "60.5")
                .with("tagRead", "C-9")
                .with("figures.hours", "12 034", "h")
                .with("figures.dischargeTemperature", "9000", "Cel")
                .with("runs[1].laps", "soon")
                .with("runs[2].laps", "160 psi @ 20 s; 150 psi @ 30 s")
                .post(site);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.error("tagRead")).contains("C-9", "C-1");
        assertThat(answer.error("figures.hours")).contains("blank inside");
        assertThat(answer.error("figures.dischargeTemperature")).contains("9000 °C cannot be");
        assertThat(answer.error("runs1.laps")).contains("“soon” is no mark");
        assertThat(answer.error("runs2.laps")).contains("must rise");
        assertThat(answer.typed("figures.hours.number")).isEqualTo("12 034");
        assertThat(answer.typed("runs[1].laps")).isEqualTo("soon");
        assertThat(count("pump_up_test")).isZero();
    }

    @Test
    void asksAboutWhatIsUnusualAndTakesTheTick() {
        SentForm unusual = guided("2026-06-02", "3.2", "3.8", "3.5").with("runs[0].laps", "");

        var asked = unusual.post(site);
        var taken = unusual.with("confirmed", asked.token()).post(site);

        assertThat(asked.status()).isEqualTo(422);
        assertThat(taken.redirect()).isEqualTo("/tests/1");
    }

    @Test
    void stopsAtAReceiverThatMustNotBePumpedUp() {
        SentForm hazardous =
                RECEIVER.with("tag", "R-2").with("reliefSet", "250", "[psi]").with("certificateDue", "2026-05-20");
        hazardous.with("confirmed", hazardous.post(site).token()).post(site);

        var stops = SentForm.get(site, "/guided/1").page().select(".stop[data-receiver=2]");

        assertThat(stops.text())
                .contains(
                        "R-2: Relief valve of the register is set at 250 psi, above the MAWP of 200 psi",
                        "ran out on 2026-05-20");
    }

    @Test
    void flagsAGaugePastItsDateAndNeedsAReason() {
        GAUGE.post(site);
        certificate("K-1", "2024-01-02").post(site);

        var page = SentForm.get(site, "/guided/1").page();
        SentForm form = guided("2026-06-02", "60.2", "60.8", "60.5").with("gauge", "1");

        assertThat(page.select("[data-instrument=1]").text()).contains("G-1 is past its calibration date");
        assertThat(form.post(site).error("overrideReason")).contains("G-1 is past");
        assertThat(form.with("overrideReason", "the other one leaks").post(site).redirect())
                .isEqualTo("/tests/1");
    }

    @Test
    void asksAVariableSpeedMachineWhetherItsSpeedIsHeld() {
        COMPRESSOR.with("tag", "V-1").with("control", "VARIABLE_SPEED").post(site);

        var page = SentForm.get(site, "/guided/2").page();

        assertThat(page.select(".speed-stop").text()).contains("Speed not fixed", "the control, not wear");
        assertThat(page.select("[name='checks.speedHeld']")).hasSize(1);
    }

    @Test
    void leadsFromTheLabelOfAMachineToItsPage() {
        assertThat(SentForm.get(site, "/guided?tag=c-1").redirect()).isEqualTo("/guided/1");
        assertThat(SentForm.get(site, "/guided?tag=X-7").text()).contains("No machine in service has the tag “X-7”");
    }

    @Test
    void judgesTheHoldBeforeTheRuns() {
        SentForm form = guided("2026-06-02")
                .at("/compressors/1/tests/hold")
                .with("checks.holdStart", "170.0", "[psi]")
                .with("checks.holdWait", "5:00", "s");

        // hand figure of the leak: 122.1/7.48052 gal→ft³ × ln(184.5/174.5)/141 s × 179.5/14.5 × 60 = 4.79 cfm
        var falls = form.with("checks.holdEnd", "160.0", "[psi]").with("checks.holdWait", "141", "s");

        assertThat(body(form.with("checks.holdEnd", "169.9", "[psi]").post(site)))
                .contains("data-verdict=\"PASSES\"");
        assertThat(body(falls.post(site))).contains("data-verdict=\"FALLS\"", "4.79");
        assertThat(body(form.with("checks.holdEnd", "172.0", "[psi]").post(site)))
                .contains("data-verdict=\"RISES\"");
        assertThat(body(form.post(site))).contains("needs both pressures");
    }

    @Test
    void saysWhatTheRunsSoFarComeToAndRecordsNothing() {
        SentForm form = guided("2026-06-02", "60.2").at("/compressors/1/tests/preview");

        assertThat(body(form.post(site))).contains("Run 1, 60.2 s", "34.8 ± 2.8 cfm");
        assertThat(body(form.with("airTemperature", "SETTLED").post(site))).contains("not settled yet");
        assertThat(body(form.with("runs[0].elapsed.number", "").post(site))).contains("No run is finished yet");
        assertThat(count("pump_up_test")).isZero();
    }

    @Test
    void correctsReadingsByOthersThatTakeTheirPlace() {
        guided("2026-06-02", "60.2", "60.8", "60.5").post(site);
        var form = SentForm.get(site, "/guided/readings/1/correct");
        SentForm correction = SentForm.to("/guided/readings/1/correct")
                .with("submission", form.typed("submission"))
                .with("figures.hours", "12043", "h");

        var refused = correction.post(site);
        var taken = correction.with("reason", "digits swapped").post(site);

        assertThat(form.typed("figures.hours.number")).isEqualTo("12034");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(taken.redirect()).isEqualTo("/guided/readings/2");
        assertThat(SentForm.get(site, "/guided/readings/1").text()).contains("12034 h", "digits swapped");
        assertThat(SentForm.get(site, "/tests/1").text()).contains("12043 h");
        assertThat(count("machine_readings")).isEqualTo(2);
    }

    @Test
    void givesTheScriptThatKeepsPagesItsFilesAndTheirDigest() {
        String script = body(SentForm.get(site, "/sw.js"));

        assertThat(script).containsPattern("^const VERSION = \"[0-9a-f]{16}\";").contains("/js/guided-timer.js");
        for (String file : SentForm.get(site, "/guided/1").page().select("main script, main link").stream()
                .map(part -> part.hasAttr("src") ? part.attr("src") : part.attr("href"))
                .toList()) {
            assertThat(script).contains('"' + file + '"');
        }
    }

    @Test
    void putsReadingsAndTheGuideIntoTheExport() {
        guided("2026-06-02", "60.2", "60.8", "60.5").post(site);

        assertThat(body(SentForm.get(site, "/export/machine_readings.csv"))).contains("12034", "'=squeal", "SLACK");
        assertThat(body(SentForm.get(site, "/export/tests.csv")))
                .contains("150 [psi] @ 18.8 s; 160 [psi] @ 37.4 s", "SILENT", "240000");
    }
}

@OnH2
final class GuidedOnH2WebTests extends GuidedWebTests {}

@OnPostgres
final class GuidedOnPostgresWebTests extends GuidedWebTests {}
