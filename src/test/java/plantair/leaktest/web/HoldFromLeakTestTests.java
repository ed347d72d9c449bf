package plantair.leaktest.web;

import static org.assertj.core.api.Assertions.assertThat;
import static plantair.testing.LeakForms.holdOfMachine;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;

/** A fall of the test volume as the hold of a pump-up test. */
@OnH2
class HoldFromLeakTestTests {

    private static final String UNSOUND = "no sound fall of this machine’s test volume";

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @Autowired
    private JdbcTemplate jdbc;

    @BeforeEach
    void startWithAPlant() {
        database.wipe();
        for (SentForm form : List.of(PlantForms.SITE, PlantForms.COMPRESSOR, PlantForms.RECEIVER, PlantForms.PIPE)) {
            assertThat(form.post(site).status()).isEqualTo(302);
        }
    }

    private void record(SentForm form) {
        var answer = form.post(site);
        assertThat(answer.status()).as(answer.text()).isEqualTo(302);
    }

    private static SentForm pumpUp(String start, String end, String minutes) {
        return PlantForms.pumpUp("2026-06-15", "60.2", "60.8", "60.5")
                .with("time", "06:00")
                .with("checks.holdStart", start, "[psi]")
                .with("checks.holdEnd", end, "[psi]")
                .with("checks.holdWait", minutes, "min")
                .with("checks.holdPlace", "TEST_VOLUME");
    }

    private Map<String, Object> result() {
        return jdbc.queryForMap("select free_air_m3_per_s, hand_m3_per_s from pump_up_result order by test_id desc"
                + " fetch first 1 rows only");
    }

    @Test
    void fillsTheFormAndGivesTheSameResultAsAHoldTypedIn() {
        record(pumpUp("170", "165", "5"));
        var typed = result();
        record(holdOfMachine("170", "165", "5"));

        var leakTest = SentForm.get(site, "/leak-tests/1");
        String link = leakTest.page().select("a[href*=leakTest]").attr("href");
        var form = SentForm.get(site, link);

        assertThat(link).isEqualTo("/compressors/1/tests/new?leakTest=1");
        assertThat(form.typed("checks.holdStart.number")).isEqualTo("170");
        assertThat(form.typed("checks.holdEnd.number")).isEqualTo("165");
        assertThat(form.typed("checks.leakTest")).isEqualTo("1");
        record(pumpUp("170", "165", "5").with("checks.leakTest", "1").with("confirmed", ""));
        assertThat(result()).isEqualTo(typed);
        var page = SentForm.get(site, "/tests/2");
        assertThat(page.text()).contains("The static hold is leak test 1 of the same volume.");
        assertThat(SentForm.get(site, "/tests/1").text()).doesNotContain("leak test 1");
    }

    @Test
    void refusesTheCheckValve() {
        record(holdOfMachine("170", "165", "5").with("place", "CHECK_VALVE"));

        assertThat(SentForm.get(site, "/leak-tests/1").page().select("a[href*=leakTest]"))
                .isEmpty();
        assertThat(pumpUp("170", "165", "5")
                        .with("checks.leakTest", "1")
                        .post(site)
                        .error("checks.leakTest"))
                .contains(UNSOUND);
        assertThat(pumpUp("170", "165", "5")
                        .with("checks.leakTest", "1")
                        .with("checks.holdPlace", "CHECK_VALVE")
                        .post(site)
                        .error("checks.leakTest"))
                .contains("never corrects a pump-up test");
    }

    @Test
    void refusesAnotherVolumeAnotherHoldAndWhatIsNotTold() {
        record(holdOfMachine("170", "165", "5"));
        record(holdOfMachine("170", "169.9", "5"));

        assertThat(pumpUp("170", "164", "5")
                        .with("checks.leakTest", "1")
                        .post(site)
                        .error("checks.leakTest"))
                .contains("The hold is not as the leak test has it");
        assertThat(pumpUp("170", "165", "5")
                        .with("checks.leakTest", "1")
                        .with("pipes", "")
                        .post(site)
                        .status())
                .isEqualTo(422);
        assertThat(pumpUp("170", "169.9", "5")
                        .with("checks.leakTest", "2")
                        .post(site)
                        .error("checks.leakTest"))
                .contains(UNSOUND);
        assertThat(pumpUp("170", "165", "5")
                        .with("checks.leakTest", "9")
                        .post(site)
                        .error("checks.leakTest"))
                .contains(UNSOUND);
    }
}
