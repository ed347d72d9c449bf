package plantair.stories;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plantair.testing.PlantForms.COMPRESSOR;
import static plantair.testing.PlantForms.PIPE;
import static plantair.testing.PlantForms.RECEIVER;
import static plantair.testing.PlantForms.SITE;
import static plantair.testing.PlantForms.air;
import static plantair.testing.PlantForms.band;
import static plantair.testing.PlantForms.pumpUp;
import static plantair.testing.PlantForms.runs;

import jakarta.servlet.http.Cookie;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.SentForm;
import plantair.web.UnitSet;

/** A plant that reads bar and litres tests a machine that is still cold. */
abstract class ColdStartStoryTests extends Story {

    private static final Cookie LITRES = new Cookie(UnitSet.COOKIE, UnitSet.BAR_LITRE.name());

    private static final SentForm COLD = air(
                    band(pumpUp("2026-03-02", "48", "51", "54"), "7.0", "8.5", "bar"), "35", "Cel")
            .with("pipes", "")
            .with("barometer", "0.985", "bar")
            .with("intakeTemperature", "22", "Cel");

    @BeforeEach
    void plantInBarAndLitres() {
        register(
                SITE.with("elevation", "200", "m").with("zone", "Europe/Oslo"),
                COMPRESSOR.with("ratings[0].pressure", "8.5", "bar").with("ratings[0].flow", "13.5", "L/s"),
                RECEIVER.with("volume", "500", "L").with("mawp", "11", "bar").with("reliefSet", "11", "bar"),
                PIPE);
    }

    private SentForm warm() {
        return runs(COLD, "56.0", "56.4", "56.2")
                .with("submission", "7d5a61d8-3b4c-4a1d-9e0f-5f6a7b8c9d01")
                .with("time", "09:30");
    }

    @Test
    void averagesNothingWhileTheMachineStillWarms() {
        TestPage page = TestPage.of(site, send(COLD), LITRES);

        // 500 L × 1.5 / 0.985 / t × 295.15 / 308.15 = 15.2, 14.3, 13.5 L/s
        assertThat(page.runs().get(0)).isCloseTo(15.2, NEAR);
        assertThat(page.runs().get(1)).isCloseTo(14.3, NEAR);
        assertThat(page.runs().get(2)).isCloseTo(13.5, NEAR);
        assertThat(page.figure(TestPage.SPREAD)).isCloseTo(12, within(0.5));
        assertThat(page.says(TestPage.FREE_AIR)).contains("No figure").doesNotContain("L/s");
        assertThat(page.finding("still warming")).startsWith("■ do not use").contains("wait and repeat");
        assertThat(page.says(TestPage.OF_BASELINE)).contains("no baseline yet");
        assertThat(csv().get(0).get("free_air_m3_per_s")).isEmpty();
        assertThat(trend(true)).isEmpty();
    }

    @Test
    void averagesTheSteadyRunsOfALaterTest() {
        record(COLD);

        TestPage page = TestPage.of(site, send(warm()), LITRES);

        assertThat(page.figure(TestPage.FREE_AIR)).isCloseTo(13.0, NEAR);
        assertThat(page.says(TestPage.FREE_AIR)).contains("L/s");
        assertThat(page.says(TestPage.SPREAD)).isEqualTo("0.7 %");
        assertThat(page.figure(TestPage.OF_RATING)).isCloseTo(96.1, NEAR);
        assertThat(page.says(TestPage.OF_BASELINE)).contains("this test is the baseline");
        assertThat(page.text()).contains("7.0 bar", "0.985 bar", "500 L", "35 °C");
    }

    @Test
    void showsTheSameFlowInCubicFeetToWhoeverWantsThem() {
        record(COLD);

        TestPage page = record(warm());

        assertThat(page.figure(TestPage.FREE_AIR)).isCloseTo(27.5, NEAR);
        assertThat(page.says(TestPage.FREE_AIR)).contains("cfm");
    }
}

@OnH2
final class ColdStartOnH2StoryTests extends ColdStartStoryTests {}

@OnPostgres
final class ColdStartOnPostgresStoryTests extends ColdStartStoryTests {}
