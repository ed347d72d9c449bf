package plantair.history.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plantair.testing.PlantForms.COMPRESSOR;
import static plantair.testing.PlantForms.PIPE;
import static plantair.testing.PlantForms.RECEIVER;
import static plantair.testing.PlantForms.SITE;
import static plantair.testing.PlantForms.pumpUp;

import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.SentForm;

abstract class CostOnPageTests {

    private static final SentForm PRICED = SITE.with("currency", "USD").with("tariff", "0.12", "/(kW.h)");
    private static final SentForm LOADED = COMPRESSOR.with("loadedHours", "6000", "h");
    private static final SentForm FIRST = pumpUp("2025-01-05", "60.5", "60.5", "60.5");
    private static final SentForm WORN = pumpUp("2026-01-05", "71.2", "71.2", "71.2");

    @Autowired
    private Database database;

    @Autowired
    private MockMvcTester site;

    @BeforeEach
    void startEmpty() {
        database.wipe();
    }

    /** 60.5 s over 71.2 s are 85.0 % of baseline: 15.0 % of 6,000 h, of 8 kW for that long, at 0.12. By hand. */
    @Test
    void statesTheCostOfLostOutput() {
        register(PRICED, LOADED, RECEIVER, PIPE, FIRST, WORN.with("checks.inputPower", "8.0", "kW"));

        Element cost = cost();

        assertThat(figure(cost, 0)).isCloseTo(15.0, within(0.2));
        assertThat(figure(cost, 1)).isCloseTo(17.7, within(0.3));
        assertThat(figure(cost, 2)).isCloseTo(902, within(10.0));
        assertThat(figure(cost, 3)).isCloseTo(7_213, within(100.0));
        assertThat(Double.parseDouble(cost.select(".lead").text().split(" ")[0]))
                .isCloseTo(865.6, within(10.0));
        assertThat(cost.select(".lead").text()).matches("\\d+ ± \\d+ USD a year");
        assertThat(cost.text()).contains("By the last test alone", "Power as the test of 2026-01-05 read it");
        assertThat(cost.select("li")).isEmpty();
    }

    @Test
    void namesWhatIsMissingAndWhereItIsToBeTyped() {
        register(SITE, COMPRESSOR, RECEIVER, PIPE, FIRST, WORN);

        Element cost = cost();

        assertThat(cost.select("dd")).hasSize(2);
        assertThat(cost.select(".lead")).isEmpty();
        assertThat(cost.select("li a").eachAttr("href"))
                .containsExactly("/compressors/1/edit", "/tests/new?compressor=1", "/sites/1/edit");
    }

    /** A power factor that nobody read would be a guess with money behind it. */
    @Test
    void takesNoPowerFromAmpsWithoutAPowerFactor() {
        register(
                PRICED,
                LOADED.with("motor.phases", "3"),
                RECEIVER,
                PIPE,
                FIRST,
                WORN.with("checks.voltage", "460", "V").with("checks.motorCurrent", "12", "A"));

        assertThat(cost().select("dd")).hasSize(3);
        assertThat(cost().select("li").text()).contains("power factor");
    }

    @Test
    void statesNothingWithinTheUncertainty() {
        register(PRICED, LOADED, RECEIVER, PIPE, FIRST, pumpUp("2026-01-05", "60.9", "60.9", "60.9"));

        assertThat(cost().text()).contains("cannot be told from its baseline");
        assertThat(cost().select("dl, ul, .lead")).isEmpty();
    }

    @Test
    void statesNothingBeforeASecondTest() {
        register(PRICED, LOADED, RECEIVER, PIPE, FIRST);

        assertThat(cost().text()).contains("No later test");
        assertThat(cost().select("dl, ul, .lead")).isEmpty();
    }

    private void register(SentForm... forms) {
        for (SentForm form : forms) {
            var answer = form.post(site);
            assertThat(answer.status()).as(answer.text()).isEqualTo(302);
        }
    }

    private Element cost() {
        Element cost = SentForm.get(site, "/compressors/1")
                .page()
                .select("section[aria-labelledby=cost]")
                .first();
        assertThat(cost.text()).doesNotContain("??");
        return cost;
    }

    private static double figure(Element cost, int row) {
        return Double.parseDouble(cost.select("dd").get(row).text().split(" ")[0]);
    }
}

@OnH2
final class CostOnPageOnH2Tests extends CostOnPageTests {}

@OnPostgres
final class CostOnPageOnPostgresTests extends CostOnPageTests {}
