package plantair.web.http;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CyclicBarrier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;

/** Two people correct one record: the second sees the correction of the first and what he sent, and nothing is lost. */
abstract class OvertakenTests {

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @Autowired
    private JdbcTemplate jdbc;

    @BeforeEach
    void plantWithOneOfEach() {
        database.wipe();
        List.of(PlantForms.SITE, PlantForms.COMPRESSOR, PlantForms.RECEIVER, PlantForms.PIPE, PlantForms.GAUGE)
                .forEach(form -> form.post(site));
    }

    private static SentForm correctionOfTheTest(String who, String seconds) {
        return PlantForms.pumpUp("2026-05-12", seconds, "62.8", "62.5")
                .at("/tests/1/supersede")
                .with("recordedBy", who)
                .with("reason", who + " read the watch again");
    }

    private static SentForm event(String address) {
        return SentForm.to(address)
                .with("submission", UUID.randomUUID().toString())
                .with("happenedOn", "2026-03-01")
                .with("kind", "VALVES")
                .with("edit.who", "Ann");
    }

    private void shows(SentForm.Answer late, String by, String page, String typed) {
        assertThat(late.status()).isEqualTo(409);
        assertThat(late.text()).contains("corrected meanwhile by Ann (ann), 2026-06-15 12:00:00 UTC", typed);
        assertThat(late.page().select("main .notice a").attr("href")).isEqualTo(page);
        assertThat(late.page().select("main form"))
                .as("sent once more it would fail once more")
                .isEmpty();
    }

    @Test
    void showsTheOthersCorrectionOfATest() {
        PlantForms.pumpUp("2026-05-12", "62.2", "62.8", "62.5").post(site);
        assertThat(correctionOfTheTest("Bo", "62.3").post(site).redirect()).isEqualTo("/tests/2");

        var late = correctionOfTheTest("Cy", "62.4").post(site);

        shows(late, "Bo", "/tests/2", "62.4");
        assertThat(late.text()).contains("Bo read the watch again");
    }

    @Test
    void showsTheOthersCorrectionOfACalibration() {
        PlantForms.certificate("K-1", "2026-03-01").post(site);
        var correction = PlantForms.certificate("K-2", "2026-03-02")
                .at("/instruments/1/calibrations/1/supersede")
                .with("edit.reason", "day misread");
        assertThat(correction.with("edit.who", "Bo").post(site).status()).isEqualTo(302);

        var late = correction
                .with("submission", UUID.randomUUID().toString())
                .with("certificateNumber", "K-3")
                .post(site);

        shows(late, "Bo", "/instruments/1", "K-3");
    }

    @Test
    void showsTheOthersCorrectionOfAnEvent() {
        event("/compressors/1/events/new").post(site);
        var correction = event("/events/1/correct").with("kind", "RINGS").with("edit.reason", "invoice read again");
        assertThat(correction.with("edit.who", "Bo").post(site).status()).isEqualTo(302);

        var late = event("/events/1/correct")
                .with("kind", "RINGS")
                .with("note", "all four")
                .with("edit.reason", "seen")
                .post(site);

        shows(late, "Bo", "/compressors/1/events", "all four");
    }

    @Test
    void letsOneOfManyThroughThatCorrectATestAtTheSameMoment() throws Exception {
        PlantForms.pumpUp("2026-05-12", "62.2", "62.8", "62.5").post(site);
        var start = new CyclicBarrier(4);
        var answers = List.of("Bo", "Cy", "Di", "Ed").stream()
                .map(who -> CompletableFuture.supplyAsync(() -> {
                    try {
                        start.await();
                    } catch (Exception failed) {
                        throw new IllegalStateException(failed);
                    }
                    return correctionOfTheTest(who, "62.3").post(site).status();
                }))
                .toList();

        assertThat(answers.stream().map(CompletableFuture::join).sorted()).containsExactly(302, 409, 409, 409);
        assertThat(jdbc.queryForObject("select count(*) from pump_up_test", Integer.class))
                .isEqualTo(2);
        assertThat(jdbc.queryForObject("select count(*) from pump_up_result", Integer.class))
                .isEqualTo(2);
    }
}

@OnH2
final class OvertakenOnH2Tests extends OvertakenTests {}

@OnPostgres
final class OvertakenOnPostgresTests extends OvertakenTests {}
