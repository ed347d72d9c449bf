package plantair.stories;

import static org.assertj.core.api.Assertions.assertThat;
import static plantair.testing.PlantForms.COMPRESSOR;
import static plantair.testing.PlantForms.PIPE;
import static plantair.testing.PlantForms.RECEIVER;
import static plantair.testing.PlantForms.SITE;
import static plantair.testing.PlantForms.air;
import static plantair.testing.PlantForms.band;
import static plantair.testing.PlantForms.pumpUp;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.SentForm;

/** A sound machine 5,280 ft up would be condemned by the barometer of the sea. */
abstract class MileHighPlantStoryTests extends Story {

    private static final SentForm WITHOUT_BAROMETER = air(
                    band(pumpUp("2026-03-02", "99.4", "99.4", "99.4"), "100.0", "125.0", "[psi]"), "75", "[degF]")
            .with("pipes", "")
            .with("barometer.number", "");
    private static final SentForm FORECAST = WITHOUT_BAROMETER.with("barometer", "29.92", "[in_i'Hg]");

    @BeforeEach
    void plantAMileUp() {
        register(
                SITE.with("elevation.number", "5280").with("zone", "America/Denver"),
                COMPRESSOR.with("ratings[0].pressure.number", "125").with("ratings[0].flow.number", "42"),
                RECEIVER.with("volume.number", "240"),
                PIPE);
    }

    @Test
    void takesTheStationPressureFromTheElevation() {
        TestPage page = record(WITHOUT_BAROMETER);

        // 32.08 ft³ × 25 / 12.10 / 99.4 s = 40.0 cfm, 95 % of 42
        assertThat(page.figure(TestPage.FREE_AIR)).isCloseTo(40.0, NEAR);
        assertThat(page.figure(TestPage.OF_RATING)).isCloseTo(95.2, NEAR);
        assertThat(page.finding("barometer was not read")).contains("24.64 inHg", "5280 ft");
        assertThat(page.page().select("dl.working").text()).containsPattern("= 12\\.10\\d* psia");
        assertThat(csv().get(0).get("station_pressure_pa")).startsWith("834");
    }

    @Test
    void challengesTheBarometerOfAForecast() {
        var asked = FORECAST.post(site);

        assertThat(asked.status()).isEqualTo(422);
        assertThat(asked.warning("barometer")).contains("29.92 inHg", "reduced to sea level, as forecasts are?");
        assertThat(asked.typed("barometer.number")).isEqualTo("29.92");
        assertThat(trend(true)).isEmpty();
    }

    @Test
    void saysThatItDoubtsAForecastThatWasInsistedOn() {
        String token = FORECAST.post(site).token();

        TestPage page = record(FORECAST.with("confirmed", token));

        // 32.08 ft³ × 25 / 14.70 / 99.4 s = 32.9 cfm, 78 % of 42
        assertThat(page.figure(TestPage.OF_RATING)).isCloseTo(78.4, NEAR);
        assertThat(page.finding("reduced to sea level")).startsWith("▲ caution").contains("24.64 inHg");
        assertThat(page.text()).contains("Unusual readings that were confirmed");
    }
}

@OnH2
final class MileHighPlantOnH2StoryTests extends MileHighPlantStoryTests {}

@OnPostgres
final class MileHighPlantOnPostgresStoryTests extends MileHighPlantStoryTests {}
