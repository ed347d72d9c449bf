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

/** A result too good to be true: 16 gallons of water stood in the receiver. */
abstract class WaterInTheReceiverStoryTests extends Story {

    private static final SentForm TOO_GOOD = pumpUp("2026-03-02", "52.6", "52.6", "52.6");
    private static final SentForm RETEST = pumpUp("2026-03-02", "60.4", "60.4", "60.4")
            .at("/tests/2/supersede")
            .with("reason", "water");

    @BeforeEach
    void machineWithABaseline() {
        register(SITE, COMPRESSOR, RECEIVER, PIPE, pumpUp("2025-03-02", "60.5", "60.5", "60.5"));
    }

    @Test
    void keepsWhatIsTooGoodFromTheTrendAndSaysWhatWouldExplainIt() {
        TestPage page = record(TOO_GOOD);

        // 122.1 gal × 32 / 14.5 / 52.6 s × 534.67 / 554.67 = 39.6 cfm, 113 % of 35
        assertThat(page.figure(TestPage.FREE_AIR)).isCloseTo(39.6, NEAR);
        assertThat(page.figure(TestPage.OF_RATING)).isCloseTo(113.1, NEAR);
        assertThat(page.finding("too good to be the machine"))
                .startsWith("■ do not use")
                .contains("does not join the trend", "water in the receiver");
        assertThat(page.says(TestPage.FREE_AIR)).contains("cfm");
        assertThat(trend(true)).containsExactly("2025-03-02");
        assertThat(trend(false)).containsExactly("2026-03-02");
        assertThat(SentForm.get(site, "/").text()).contains("too good");
    }

    @Test
    void saysHowMuchWaterItWouldTake() {
        TestPage page = record(TOO_GOOD);

        // 122.1 gal × (1 - 34.3 / 39.6) = 16.3 gal for an ideal gas; half a gallon more with compressibility
        assertThat(page.explanations()).first().satisfies(line -> {
            assertThat(line).startsWith("less volume than stated (water").endsWith(" US gal");
            assertThat(TestPage.first(line)).isCloseTo(16.3, within(0.7));
        });
    }

    @Test
    void correctsTheRunAndKeepsItWithTheReason() {
        record(TOO_GOOD);

        TestPage retest = record(RETEST);

        assertThat(retest.figure(TestPage.FREE_AIR)).isCloseTo(34.5, NEAR);
        assertThat(retest.figure(TestPage.OF_BASELINE)).isCloseTo(100.2, within(0.2)); // 60.5 / 60.4
        assertThat(retest.text()).contains("takes the place of test 2. Reason: water", "Ann (ann)");
        TestPage first = TestPage.of(site, "/tests/2");
        assertThat(first.text()).contains("superseded: test 3 takes its place. Reason: water", "52.6 s");
        assertThat(first.figure(TestPage.FREE_AIR)).isCloseTo(39.6, NEAR);
        assertThat(trend(true)).containsExactly("2026-03-02", "2025-03-02");
        assertThat(trend(false)).isEmpty();
    }

    @Test
    void exportsTheRunBesideItsCorrection() {
        record(TOO_GOOD);
        record(RETEST);

        var rows = csv();
        assertThat(rows.get(3).get("elapsed")).isEqualTo("52.6");
        assertThat(rows.get(3).get("superseded_by")).isEqualTo("3");
        assertThat(rows.get(3).get("findings")).startsWith("TOO_GOOD");
        assertThat(rows.get(6).get("supersedes")).isEqualTo("2");
        assertThat(rows.get(6).get("reason")).isEqualTo("water");
    }
}

@OnH2
final class WaterInTheReceiverOnH2StoryTests extends WaterInTheReceiverStoryTests {}

@OnPostgres
final class WaterInTheReceiverOnPostgresStoryTests extends WaterInTheReceiverStoryTests {}
