package plantair.stories;

import static org.assertj.core.api.Assertions.assertThat;
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

/** A machine whose speed follows the pressure shows its control, not its wear, unless the speed is held. */
abstract class FreeSpeedStoryTests extends Story {

    @BeforeEach
    void screwMachineOfVariableSpeed() {
        register(
                SITE,
                COMPRESSOR
                        .with("kind", "SCREW")
                        .with("stages", "1")
                        .with("drive", "DIRECT")
                        .with("control", "VARIABLE_SPEED"),
                RECEIVER,
                PIPE);
    }

    @Test
    void asksWhetherTheSpeedWasHeld() {
        var form = SentForm.get(site, "/compressors/1/tests/new");

        assertThat(form.page().select("[name='checks.speedHeld']")).hasSize(1);
        assertThat(form.text()).contains("A variable-speed machine in automatic shows its control, not its wear.");
    }

    @Test
    void savesATestInAutomaticButKeepsItFromTheTrend() {
        TestPage open = record(pumpUp("2026-03-02", "60.2", "60.8", "60.5"));
        TestPage no = record(pumpUp("2026-03-09", "60.2", "60.8", "60.5").with("checks.speedHeld", "NO"));

        for (TestPage page : new TestPage[] {open, no}) {
            assertThat(page.finding("speed was not held"))
                    .startsWith("■ do not use")
                    .contains("shows the control, not wear", "does not join the trend", "Lock full speed");
            assertThat(page.says(TestPage.OF_BASELINE)).contains("no baseline yet");
        }
        assertThat(trend(true)).isEmpty();
        assertThat(trend(false)).containsExactly("2026-03-09", "2026-03-02");
    }

    @Test
    void letsATestAtHeldSpeedJoinTheTrend() {
        record(pumpUp("2026-03-02", "60.2", "60.8", "60.5"));

        TestPage page = record(pumpUp("2026-03-09", "60.2", "60.8", "60.5")
                .with("checks.speedHeld", "YES")
                .with("speed", "1770", "{rev}/min"));

        assertThat(page.text()).doesNotContain("speed was not held").contains("1770 rpm");
        assertThat(page.says(TestPage.OF_BASELINE)).contains("this test is the baseline");
        assertThat(trend(true)).containsExactly("2026-03-09");
        assertThat(csv().get(0).get("joins_trend")).isEqualTo("false");
        assertThat(csv().get(3).get("joins_trend")).isEqualTo("true");
    }
}

@OnH2
final class FreeSpeedOnH2StoryTests extends FreeSpeedStoryTests {}

@OnPostgres
final class FreeSpeedOnPostgresStoryTests extends FreeSpeedStoryTests {}
