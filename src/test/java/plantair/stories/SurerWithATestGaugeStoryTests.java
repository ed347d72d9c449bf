package plantair.stories;

import static org.assertj.core.api.Assertions.assertThat;
import static plantair.testing.PlantForms.COMPRESSOR;
import static plantair.testing.PlantForms.GAUGE;
import static plantair.testing.PlantForms.PIPE;
import static plantair.testing.PlantForms.RECEIVER;
import static plantair.testing.PlantForms.SITE;
import static plantair.testing.PlantForms.certificate;
import static plantair.testing.PlantForms.pumpUp;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;

/** How sure a result is, and whether the machine meets its plate, depends on what it was read with. */
abstract class SurerWithATestGaugeStoryTests extends Story {

    @BeforeEach
    void plantWithATestGauge() {
        register(SITE, COMPRESSOR, RECEIVER, PIPE, GAUGE, certificate("K-1", "2026-01-02"));
    }

    @Test
    void makesTheSameFlowSurerWithATestGauge() {
        TestPage unnamed = record(pumpUp("2026-03-02", "60.2", "60.8", "60.5"));
        TestPage named = record(pumpUp("2026-03-09", "60.2", "60.8", "60.5").with("gauge", "1"));

        assertThat(named.figure(TestPage.FREE_AIR)).isEqualTo(unnamed.figure(TestPage.FREE_AIR));
        assertThat(named.uncertainty()).isLessThan(unnamed.uncertainty());
        assertThat(unnamed.components()).contains("Gauge, not named").doesNotContain("Gauge, in proportion");
        assertThat(named.components()).contains("Gauge, in proportion").doesNotContain("Gauge, not named");
        assertThat(unnamed.finding("No gauge was named")).startsWith("○ note");
        assertThat(named.text()).contains("Instrument G-1", "due 2027-01-02, in date");
    }

    @Test
    void cannotTellWhetherAMachineNearItsLimitMeetsItsPlate() {
        TestPage page = record(pumpUp("2026-03-02", "63.4", "63.4", "63.4")); // 94 % of the plate, and 6 % are allowed

        assertThat(page.says(TestPage.VERDICT)).startsWith("cannot be told").contains("probability", "tolerance 6.0 %");
        assertThat(page.finding("cannot be told")).contains("would settle it");
    }

    @Test
    void tellsThatAMachineMeetsItsPlate() {
        TestPage page = record(pumpUp("2026-03-02", "57.0", "57.0", "57.0").with("gauge", "1"));

        assertThat(page.says(TestPage.VERDICT)).startsWith("meets the rating").containsPattern("probability 9[5-9]\\.");
        assertThat(page.text()).doesNotContain("Whether the machine meets its rating cannot be told");
    }

    @Test
    void tellsThatAMachineDoesNotMeetItsPlate() {
        TestPage page = record(pumpUp("2026-03-02", "80.0", "80.0", "80.0").with("gauge", "1"));

        assertThat(page.says(TestPage.VERDICT)).startsWith("does not meet").containsPattern("probability [0-4]\\.");
    }
}

@OnH2
final class SurerWithATestGaugeOnH2StoryTests extends SurerWithATestGaugeStoryTests {}

@OnPostgres
final class SurerWithATestGaugeOnPostgresStoryTests extends SurerWithATestGaugeStoryTests {}
