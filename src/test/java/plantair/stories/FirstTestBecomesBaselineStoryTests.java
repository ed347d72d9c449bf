package plantair.stories;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plantair.testing.PlantForms.COMPRESSOR;
import static plantair.testing.PlantForms.PIPE;
import static plantair.testing.PlantForms.RECEIVER;
import static plantair.testing.PlantForms.SITE;
import static plantair.testing.PlantForms.pumpUp;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.SentForm;

/** The first good test of a machine is what later ones are held against. */
abstract class FirstTestBecomesBaselineStoryTests extends Story {

    @BeforeEach
    void plantWithOneMachine() {
        register(SITE, COMPRESSOR, RECEIVER, PIPE);
    }

    @Test
    void saysWhatTheMachineDeliversAndTakesItAsTheBaseline() {
        TestPage page = record(pumpUp("2026-01-05", "60.2", "60.8", "60.5"));

        // 122.1 gal × 32 psi / 14.5 psi / t × 534.67 °R / 554.67 °R = 34.59, 34.25, 34.42 cfm; mean 34.42
        assertThat(page.runs().get(0)).isCloseTo(34.59, NEAR);
        assertThat(page.runs().get(1)).isCloseTo(34.25, NEAR);
        assertThat(page.runs().get(2)).isCloseTo(34.42, NEAR);
        assertThat(page.figure(TestPage.FREE_AIR)).isCloseTo(34.42, NEAR);
        assertThat(page.figure(TestPage.OF_RATING)).isCloseTo(98.3, NEAR);
        assertThat(page.says(TestPage.OF_RATING)).contains("rated 35.00 cfm", "free air at the intake");
        assertThat(page.says(TestPage.SPREAD)).isEqualTo("1.0 %");
        assertThat(page.says(TestPage.OF_BASELINE)).contains("this test is the baseline");
        assertThat(page.text()).contains("120 US gal", "2.1 US gal", "14.5 psi", "60.2 s", "95 °F");
        assertThat(trend(true)).containsExactly("2026-01-05");
    }

    @Test
    void saysWhatItWouldReadWithoutTemperatures() {
        TestPage page = record(pumpUp("2026-01-05", "60.2", "60.8", "60.5"));

        // the hand method takes neither temperature nor compressibility: 16.3225 ft³ × 32 / 14.5 / t, exactly 35.716
        // cfm
        assertThat(page.figure(TestPage.HAND)).isCloseTo(35.716, within(0.005));
        String differs = page.finding("hand figure");
        assertThat(TestPage.first(differs.replaceFirst(".* is ", "")))
                .as("3.7 %% of temperature less 0.5 %% of compressibility: %s", differs)
                .isCloseTo(3.7, within(0.6));
        assertThat(differs).contains("35.72 cfm", "ignores air temperature");
    }

    @Test
    void holdsLaterTestsAgainstTheBaseline() {
        record(pumpUp("2025-01-05", "60.5", "60.5", "60.5"));

        TestPage page = record(pumpUp("2025-09-05", "64.3", "64.3", "64.3"));
        TestPage worn = record(pumpUp("2026-01-05", "68.6", "68.6", "68.6"));

        // equal but for the time, so 60.5 / 64.3 and 60.5 / 68.6, whatever volume, temperature or gas
        assertThat(page.figure(TestPage.OF_BASELINE)).isCloseTo(94.1, within(0.2));
        assertThat(worn.figure(TestPage.OF_BASELINE)).isCloseTo(88.2, within(0.2));
        assertThat(worn.says(TestPage.OF_BASELINE)).contains("baseline is test 1 of 2025-01-05");
    }

    @Test
    void putsPageTrendAndFileInAgreement() {
        TestPage page = record(pumpUp("2026-01-05", "60.2", "60.8", "60.5"));

        var rows = csv();
        assertThat(rows).hasSize(3);
        assertThat(cfm(rows.get(0), "free_air_m3_per_s")).isCloseTo(page.figure(TestPage.FREE_AIR), within(0.05));
        assertThat(rows.get(1).get("elapsed")).isEqualTo("60.8");
        assertThat(rows.get(1).get("net_volume_m3")).startsWith("0.46219");
        assertThat(TestPage.first(SentForm.get(site, "/compressors/1")
                        .page()
                        .select("#flows tbody tr")
                        .attr("data-flow")))
                .isEqualTo(page.figure(TestPage.FREE_AIR));
    }
}

@OnH2
final class FirstTestBecomesBaselineOnH2StoryTests extends FirstTestBecomesBaselineStoryTests {}

@OnPostgres
final class FirstTestBecomesBaselineOnPostgresStoryTests extends FirstTestBecomesBaselineStoryTests {}
