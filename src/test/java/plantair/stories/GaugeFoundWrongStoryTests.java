package plantair.stories;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plantair.testing.PlantForms.COMPRESSOR;
import static plantair.testing.PlantForms.GAUGE;
import static plantair.testing.PlantForms.PIPE;
import static plantair.testing.PlantForms.RECEIVER;
import static plantair.testing.PlantForms.SITE;
import static plantair.testing.PlantForms.air;
import static plantair.testing.PlantForms.band;
import static plantair.testing.PlantForms.certificate;
import static plantair.testing.PlantForms.pumpUp;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.SentForm;

/** The gauge comes back from calibration: it read 4 psi high at 175, and three tests rest on it. */
abstract class GaugeFoundWrongStoryTests extends Story {

    private static final SentForm AS_FOUND = certificate("K-2", "2026-01-08")
            .with("points[0].reading", "135", "[psi]")
            .with("points[0].error", "0", "[psi]")
            .with("points[1].reading", "175", "[psi]")
            .with("points[1].error", "4", "[psi]");
    private static final SentForm SIGNATURE =
            SentForm.to("/calibrations/2/impact").with("note", "The belt was left on for a year because of these.");

    private static final SentForm THERMOMETER = SentForm.to("/instruments")
            .with("kind", "THERMOMETER")
            .with("tag", "T-1")
            .with("span", "", "[degF]")
            .with("accuracy", "1.5", "[degF]")
            .with("division", "", "[degF]")
            .with("inService", "true");

    @BeforeEach
    void gaugeInUse() {
        register(
                SITE,
                COMPRESSOR.with("ratings[0].flow.number", "34"),
                RECEIVER,
                PIPE,
                GAUGE,
                certificate("K-1", "2025-01-10"),
                tested("2024-12-02"),
                tested("2025-02-03"),
                tested("2025-06-02"),
                tested("2025-12-01"));
    }

    private static SentForm tested(String date) {
        SentForm form = band(pumpUp(date, "80.0", "80.0", "80.0"), "135.0", "175.0", "[psi]");
        return air(form, "75", "[degF]").with("barometer", "14.6", "[psi]").with("gauge", "1");
    }

    private List<String> impact(int column) {
        return SentForm.get(site, "/calibrations/2/impact").page().select("main tbody tr").eachText().stream()
                .map(row -> row.split(" ")[column])
                .toList();
    }

    @Test
    void listsTheTestsSinceTheCalibrationBefore() {
        register(AS_FOUND, tested("2026-02-02"));

        assertThat(impact(0)).containsExactly("2025-02-03", "2025-06-02", "2025-12-01");
        var page = SentForm.get(site, "/calibrations/2/impact");
        assertThat(page.text()).contains("K-2", "G-1", "2026-01-08");
        assertThat(page.page().select("main tbody th a").eachAttr("href"))
                .containsExactly("/tests/2", "/tests/3", "/tests/4");
    }

    @Test
    void isFoundFromThePageOfTheGauge() {
        register(AS_FOUND);

        var links = SentForm.get(site, "/instruments/1")
                .page()
                .select("a[href$=/impact]")
                .eachAttr("href");

        assertThat(links)
                .isNotEmpty()
                .allSatisfy(
                        link -> assertThat(SentForm.get(site, link).status()).isEqualTo(200));
    }

    @Test
    void showsBothFiguresBeforeAnythingIsSigned() {
        register(AS_FOUND);

        // 16.3225 ft³ × 40 / 14.6 / 80.0 s = 33.54 cfm, 98.6 % of 34; restated to 171 psi × 36 = 30.19 cfm, 88.8 %
        var row = SentForm.get(site, "/calibrations/2/impact")
                .page()
                .select("main tbody tr")
                .first()
                .select("td.num");
        assertThat(TestPage.first(row.get(0).text())).isCloseTo(33.54, NEAR);
        assertThat(TestPage.first(row.get(1).text())).isCloseTo(98.6, NEAR);
        assertThat(TestPage.first(row.get(2).text())).isCloseTo(30.19, NEAR);
        assertThat(TestPage.first(row.get(3).text())).isCloseTo(88.8, NEAR);
        assertThat(TestPage.of(site, "/tests/2").figure(TestPage.HAND)).isCloseTo(33.54, within(0.01));
        assertThat(TestPage.of(site, "/tests/2").text()).doesNotContain("Restated");
    }

    @Test
    void wantsANoteUnderARestatement() {
        register(AS_FOUND);

        var answer = SIGNATURE.with("note", " ").post(site);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.error("note")).contains("what follows from it");
        assertThat(TestPage.of(site, "/tests/2").text()).doesNotContain("Restated");
    }

    @Test
    void restatesTheTestsOnceItIsSignedAndLeavesTheReadingsAlone() {
        register(AS_FOUND, SIGNATURE);

        for (String address : List.of("/tests/2", "/tests/3", "/tests/4")) {
            TestPage page = TestPage.of(site, address);
            assertThat(page.figure(TestPage.HAND)).isCloseTo(30.19, within(0.01));
            assertThat(page.figure(TestPage.FREE_AIR)).isCloseTo(30.19, NEAR);
            assertThat(page.figure(TestPage.OF_RATING)).isCloseTo(88.8, NEAR);
            String notice = page.page().select("p.notice").text();
            assertThat(notice).contains("gauge G-1 was found wrong by certificate K-2 of 2026-01-08");
            assertThat(TestPage.first(notice.replaceFirst(".*As recorded: ", "")))
                    .isCloseTo(33.54, NEAR);
            assertThat(page.page().select("section[aria-labelledby=runs]").text())
                    .contains("135.0 psi", "175.0 psi")
                    .doesNotContain("171");
            assertThat(page.page().select("dl.working").text())
                    .contains("errors of the gauge taken off", "p2 175.000 psig becomes 171.000 psig");
        }
        assertThat(TestPage.of(site, "/tests/1").figure(TestPage.HAND)).isCloseTo(33.54, within(0.01));
        assertThat(SentForm.get(site, "/calibrations/2/impact").text())
                .contains("Restated by Ann (ann)", "left on for a year");
    }

    /** As recorded all four tests are alike; restated the last three are 36/40 of the first, and a bit more is no matter. */
    @Test
    void changesTheStateOfTheMachineFromOkToPlan() {
        register(AS_FOUND);
        String before = standing();

        register(SIGNATURE);

        assertThat(before).isEqualTo("● above every limit");
        assertThat(standing()).isEqualTo("▲ plan the work");
    }

    private String standing() {
        return SentForm.get(site, "/")
                .page()
                .select("#machines tbody tr td")
                .first()
                .text();
    }

    @Test
    void signsOnce() {
        register(AS_FOUND, SIGNATURE, SIGNATURE.with("note", "Somebody else"));

        assertThat(SentForm.get(site, "/calibrations/2/impact").text())
                .contains("Restated by Ann (ann)")
                .doesNotContain("Somebody else");
    }

    @Test
    void listsButNeverRestatesTheTestsOfAThermometer() {
        register(
                THERMOMETER,
                tested("2025-12-08").with("thermometer", "2"),
                certificate("K-9", "2026-01-08")
                        .at("/instruments/2/calibrations")
                        .with("dueOn", "2027-01-08")
                        .with("points[0].reading", "95", "[degF]")
                        .with("points[0].error", "3", "[degF]"));

        var page = SentForm.get(site, "/calibrations/2/impact");
        var signed = SIGNATURE.post(site);

        assertThat(page.status()).isEqualTo(200);
        assertThat(page.text()).contains("2025-12-08", "judge these tests by hand");
        assertThat(page.page().select("main form")).isEmpty();
        assertThat(signed.status()).isEqualTo(302);
        assertThat(SentForm.get(site, "/calibrations/2/impact").text()).doesNotContain("Restated by");
    }

    @Test
    void exportsTheReadingsAsTypedWithBothFlows() {
        register(AS_FOUND, SIGNATURE);

        var row = csv().get(3);
        assertThat(row.get("test_id")).isEqualTo("2");
        assertThat(row.get("stop_pressure")).isEqualTo("175.0");
        assertThat(cfm(row, "free_air_m3_per_s")).isCloseTo(30.19, NEAR);
        assertThat(cfm(row, "as_recorded_free_air_m3_per_s")).isCloseTo(33.54, NEAR);
        assertThat(row.get("restated_by_certificate")).isEqualTo("K-2");
        assertThat(cfm(csv().get(0), "free_air_m3_per_s")).isCloseTo(33.54, NEAR);
        assertThat(csv().get(0).get("as_recorded_free_air_m3_per_s")).isEmpty();
    }

    @Test
    void takesAGaugePastItsDateOnlyWithAReasonAndKeepsIt() {
        SentForm late = tested("2026-02-02"); // K-1 ran out on 2026-01-10
        String reason = "No other gauge reaches 200 psi.";

        var refused = late.post(site);
        TestPage page = record(late.with("overrideReason", reason));

        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.error("overrideReason")).contains("G-1", "2026-01-10", "say why");
        assertThat(page.text()).contains("overdue", "Used all the same because: " + reason);
        assertThat(csv().get(12).get("override_reason")).isEqualTo(reason);
    }
}

@OnH2
final class GaugeFoundWrongOnH2StoryTests extends GaugeFoundWrongStoryTests {}

@OnPostgres
final class GaugeFoundWrongOnPostgresStoryTests extends GaugeFoundWrongStoryTests {}
