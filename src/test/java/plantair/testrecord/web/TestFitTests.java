package plantair.testrecord.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.equipment.Compressor;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.Plant;
import plantair.testing.SentForm;
import plantair.testrecord.PumpUpTest;

/** How the page of a test says that it fits those before it. */
@OnH2
final class TestFitTests {

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @Autowired
    private ApplicationContext context;

    private Plant plant;
    private Compressor compressor;

    @BeforeEach
    void startWithSixAlike() {
        database.wipe();
        plant = Plant.in(context);
        compressor = plant.compressor(plant.site());
        for (int year = 2020; year < 2026; year++) {
            plant.test(compressor, year + "-01-05T14:00:00Z", "60.2", "60.8", "60.5");
        }
    }

    private String fit(PumpUpTest test) {
        return SentForm.get(site, "/tests/" + test.id()).page().select("#fit").text();
    }

    @Test
    void findsTheNextOneInLine() {
        assertThat(fit(plant.test(compressor, "2026-01-05T14:00:00Z", "60.2", "60.7", "60.4")))
                .matches("● in line The tests before led to expect [\\d.]+ cfm, and a new test between"
                        + " [\\d.]+ cfm and [\\d.]+ cfm \\(95 %\\)\\.");
    }

    @Test
    void asksForARepeatOfOneOutOfLineBeforeAnythingIsDone() {
        assertThat(fit(plant.test(compressor, "2026-01-05T14:00:00Z", "75.2", "75.8", "75.5")))
                .startsWith("■ out of line")
                .contains("Repeat this one before you act on it");
    }

    @Test
    void saysNothingOfTheFirstAndOfOneThatDoesNotJoin() {
        assertThat(SentForm.get(site, "/tests/1").page().select("#fit")).isEmpty();
        assertThat(fit(plant.plan(compressor)
                        .on("2026-01-05T14:00:00Z")
                        .anotherMachineOn()
                        .record()))
                .isEmpty();
    }

    @Test
    void looksOnlyAtTestsBefore() {
        String early = SentForm.get(site, "/tests/3").page().select("#fit").text();
        plant.test(compressor, "2026-01-05T14:00:00Z", "75.2", "75.8", "75.5");

        assertThat(early).startsWith("● in line");
        assertThat(SentForm.get(site, "/tests/3").page().select("#fit").text()).isEqualTo(early);
    }
}
