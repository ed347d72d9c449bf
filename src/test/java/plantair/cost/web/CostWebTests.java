package plantair.cost.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plantair.testing.PlantForms.COMPRESSOR;
import static plantair.testing.PlantForms.PIPE;
import static plantair.testing.PlantForms.RECEIVER;
import static plantair.testing.PlantForms.SITE;
import static plantair.testing.PlantForms.pumpUp;

import jakarta.servlet.http.Cookie;
import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.account.Role;
import plantair.testing.Database;
import plantair.testing.NightsOfLeaks;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.People;
import plantair.testing.SentForm;

abstract class CostWebTests {

    private static final String COST = "/sites/1/cost";
    private static final String NINETEEN = "specific.number=19&specific.unit=kW/(100.[cft_i]/min)";

    @Autowired
    private ApplicationContext context;

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    private NightsOfLeaks nights;

    @BeforeEach
    void siteWithATariff() {
        database.wipe();
        send(SITE.with("currency", "USD").with("tariff", "0.11", "/(kW.h)"), COMPRESSOR, RECEIVER, PIPE);
        nights = NightsOfLeaks.in(context);
    }

    private void send(SentForm... forms) {
        for (SentForm form : forms) {
            assertThat(form.post(site).status()).as(form.address()).isEqualTo(302);
        }
    }

    private Document page(String query) {
        var answer = SentForm.get(site, COST + (query.isEmpty() ? "" : "?" + query));
        assertThat(answer.status()).as(answer.text()).isEqualTo(200);
        assertThat(answer.text()).doesNotContain("??");
        return answer.page();
    }

    private static double figure(Element row, int cell) {
        return Double.parseDouble(row.select("td").get(cell).text().split(" ")[0]);
    }

    private static Element leaks(Document page) {
        return page.select("#cost-causes tbody tr").first();
    }

    /**
     * Own (AirPriceTests): 90/410 s of 210 cfm are 37.8 cfm; at 19 kW a 100 cfm, 8,760 h and 0.11 7.2 kW and 6,921 a year; after
     * repairs 45/655 s, 13.5 cfm, 4,449 saved.
     */
    @Test
    void tellsWhatLeaksCostBeforeAndAfterRepairs() {
        long before =
                nights.record("2026-04-01", "90 s", "410 s", "210 [cft_i]/min").id();
        Document first = page(NINETEEN);

        assertThat(leaks(first).select("td").get(0).text()).startsWith("37.80 ±");
        assertThat(leaks(first).select("td").get(1).text()).isEqualTo("7.2");
        assertThat(figure(leaks(first), 2)).isCloseTo(62_914, within(50.0));
        assertThat(figure(leaks(first), 3)).isCloseTo(6_921, within(5.0));
        assertThat(first.select(".answer").text()).contains("cost 69", "USD a year", "7.2 kW");
        assertThat(first.select("main").text()).contains("19.000 kW per 100 cfm × 37.800 cfm = 7.1820 kW");
        assertThat(first.select("main").text()).contains("typed here", "all of a year");

        long after =
                nights.record("2026-05-01", "45 s", "655 s", "210 [cft_i]/min").id();
        Document both = page(NINETEEN + "&leak=" + before + "&after=" + after);

        assertThat(both.select("section[aria-labelledby=repairs]").text())
                .contains("37.80", "13.50")
                .containsPattern("saves 44\\d\\d ± \\d+ USD a year, 4.6 kW");
        assertThat(page(NINETEEN + "&idle.number=28.72&idle.unit=%&leak=" + before + "&after=" + after)
                        .text())
                .containsPattern("that saves 317\\d ± \\d+ USD a year and not 44");
        assertThat(both.select("option[selected]").eachAttr("value")).contains("" + before, "" + after);
    }

    @Test
    void takesTheNewestLeakTest() {
        nights.record("2026-04-01", "90 s", "410 s", "210 [cft_i]/min");
        nights.record("2026-05-01", "45 s", "655 s", "210 [cft_i]/min");

        assertThat(leaks(page(NINETEEN)).text()).contains("Leaks, 2026-05-01", "13.50");
    }

    @Test
    void saysThatTheSecondLeaksMore() {
        long before =
                nights.record("2026-04-01", "45 s", "655 s", "210 [cft_i]/min").id();
        long after =
                nights.record("2026-05-01", "90 s", "410 s", "210 [cft_i]/min").id();

        assertThat(page(NINETEEN + "&leak=" + before + "&after=" + after).text())
                .contains("The second one leaks more");
    }

    /** Two alike differ by nothing that could be told. */
    @Test
    void doesNotSellADifferenceThatCannotBeTold() {
        long before =
                nights.record("2026-04-01", "90 s", "410 s", "210 [cft_i]/min").id();
        long after = nights.record("2026-05-01", "89.9 s", "410 s", "210 [cft_i]/min")
                .id();

        assertThat(page(NINETEEN + "&leak=" + before + "&after=" + after).text())
                .contains("by less than can be told")
                .doesNotContain("saves");
    }

    /**
     * Bureau of Energy Efficiency (India), from memory: 1.5 min loaded and 10.5 unloaded of 35 m³/min are 4.375 m³/min; at 188 kW
     * for 35 m³/min 564.0 kWh a day.
     */
    @Test
    void agreesWithAnEnergyAuditGuide() {
        nights.record("2026-04-01", "1.5 min", "10.5 min", "35 m3/min");

        Element row = leaks(page("specific.number=5.371428571&specific.unit=kW/(m3/min)&hours.number=24&hours.unit=h"));

        assertThat(figure(row, 2)).isCloseTo(564.0, within(0.6));
    }

    /** Tip sheet of the US Department of Energy (from memory): 615.5 cfm, 18 kW a 100 cfm, 7,000 h, 0.05: 38,776 a year. */
    @Test
    void agreesWithATipSheet() {
        nights.record("2026-04-01", "100 s", "100 s", "1230.98 [cft_i]/min");

        Element row = leaks(page("specific.number=18&specific.unit=kW/(100.[cft_i]/min)&hours.number=7000&hours.unit=h"
                + "&tariff.number=0.05&tariff.unit=/(kW.h)"));

        assertThat(figure(row, 3)).isCloseTo(38_776, within(50.0));
    }

    /** The guide's machine idles at 54 of 188 kW: 134/188 of the cost is saved. */
    @Test
    void saysWhatAMachineSavesThatOnlyIdlesLonger() {
        nights.record("2026-04-01", "90 s", "410 s", "210 [cft_i]/min");

        assertThat(page(NINETEEN + "&idle.number=28.72&idle.unit=%").text())
                .containsPattern(
                        "at 28.7 % of its loaded power, mending all of it saves 493\\d ± \\d+ USD a year and not 69");
        assertThat(page(NINETEEN).text()).doesNotContain("unload and run on");
        send(COMPRESSOR
                .at("/compressors/1")
                .with("control", "LOAD_UNLOAD")
                .with("edit.reason", "seen")
                .with("edit.version", "0"));
        assertThat(page(NINETEEN).text()).contains("C-1 unload and run on");
    }

    /** 8 kW for what the test measured; the same power and flow stand on the page of the test. */
    @Test
    void takesSpecificPowerFromTheNewestTestThatReadIt() {
        send(
                pumpUp("2026-01-05", "60.2", "60.8", "60.5").with("checks.inputPower", "8.0", "kW"),
                pumpUp("2026-02-05", "60.2", "60.8", "60.5"));
        nights.record("2026-04-01", "90 s", "410 s", "210 [cft_i]/min");

        Document page = page("");
        Element row = page.select("#cost-machines tbody tr").first();

        double cfm = figure(row, 0);
        assertThat(cfm).isCloseTo(34.4, within(1.0));
        assertThat(row.text()).contains("2026-01-05", "8.0 kW");
        assertThat(figure(row, 2)).isCloseTo(100 * 8 / cfm, within(0.5));
        assertThat(figure(row, 3)).isCloseTo(8 / (cfm * 0.0283168), within(0.2));
        assertThat(figure(row, 4)).isCloseTo(100 * 8 / cfm * 8760 * 0.11, within(400.0));
        assertThat(page.select("main").text()).contains("measured: C-1");
        assertThat(figure(leaks(page), 1)).isCloseTo(37.8 * 8 / cfm, within(0.3));
    }

    /** As on the page of the machine (CostOnPageTests): 15.0 % of 6,000 h of 8 kW, at 0.11: about 793. */
    @Test
    void showsTheSameLostOutputAsThePageOfTheMachine() {
        send(
                COMPRESSOR.with("tag", "C-2").with("loadedHours", "6000", "h"),
                pumpUp("2025-01-05", "60.5", "60.5", "60.5").at("/compressors/2/tests"),
                pumpUp("2026-01-05", "71.2", "71.2", "71.2")
                        .at("/compressors/2/tests")
                        .with("checks.inputPower", "8.0", "kW"));

        Document page = page("");
        Element row = page.select("#cost-causes tbody tr").last();
        String own = SentForm.get(site, "/compressors/2")
                .page()
                .select("section[aria-labelledby=cost] .lead")
                .text();

        assertThat(row.text()).contains("Lost output of C-2");
        assertThat(own).isEqualTo(row.select("td").get(3).text() + " USD a year");
        assertThat(figure(row, 3)).isCloseTo(793, within(10.0));
        assertThat(page.select("#cost-causes tbody tr").first().text())
                .contains("Lost output of C-1", "no later test can be held");
        assertThat(Double.parseDouble(row.attr("data-bar"))).isCloseTo(793, within(10.0));
    }

    @Test
    void namesWhatIsMissingAndWhereItIsToBeTyped() {
        database.wipe();
        send(SITE, COMPRESSOR);

        Document page = page("");

        assertThat(page.select("section[aria-labelledby=missing] a").eachAttr("href"))
                .containsExactly(
                        "/sites/1/leak-tests", "/sites/1/edit", "/tests/new?compressor=1", "/compressors/1/edit");
        assertThat(page.select(".answer").text()).contains("no leak test of the whole system");
    }

    @Test
    void saysWhyALeakHasNoPriceYet() {
        nights.record("2026-04-01", "90 s", "410 s", "210 [cft_i]/min");

        assertThat(page("").select(".answer").text()).contains("37.80 ±", "cannot be priced yet");
    }

    @Test
    void tellsEnergyWithoutATariff() {
        database.wipe();
        send(SITE, COMPRESSOR);
        nights.record("2026-04-01", "90 s", "410 s", "210 [cft_i]/min");

        assertThat(page(NINETEEN).select(".answer").text())
                .containsPattern("take 629\\d\\d? ± \\d+ kWh a year|take 62\\d+ ± \\d+ kWh a year");
    }

    @Test
    void answersInTheUnitsOfThePerson() {
        nights.record("2026-04-01", "90 s", "410 s", "210 [cft_i]/min");

        var answer = SentForm.get(site, COST + "?" + NINETEEN, new Cookie("units", "BAR_CUBIC"));

        assertThat(answer.text()).contains("kW per m³/min × 1.0704 m³/min = 7.1820 kW");
    }

    @ParameterizedTest
    @CsvSource({
        "specific.number=0&specific.unit=kW/(m3/min), specific, more than zero",
        "specific.number=19&specific.unit=psi, specific, not a unit",
        "'specific.number=1,9&specific.unit=kW/(m3/min)', specific, has a comma",
        "hours.number=8785&hours.unit=h, hours, more than a year has",
        "hours.number=-1&hours.unit=h, hours, more than zero",
        "tariff.number=0&tariff.unit=/(kW.h), tariff, more than zero",
        "idle.number=100&idle.unit=%, idle, below 100",
        "idle.number=-1&idle.unit=%, idle, below 100",
        "leak=99, leak, no leak test of this site",
        "after=x, after, not"
    })
    void saysBesideTheFieldWhatIsWrong(String query, String beside, String message) {
        var answer = SentForm.get(site, COST + "?" + query);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.error(beside)).contains(message);
        assertThat(answer.page().select("#cost-causes")).isEmpty();
        assertThat(answer.text()).doesNotContain("??");
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void isReadByEverybodyAndLinksOnlyToWhatMayBeDone(Role role) {
        var answer = SentForm.get(site, COST, People.of(role));

        assertThat(answer.status()).isEqualTo(200);
        List<String> links =
                answer.page().select("section[aria-labelledby=missing] a").eachAttr("href");
        assertThat(links.contains("/compressors/1/edit")).isEqualTo(role == Role.ADMINISTRATOR || role == Role.MANAGER);
        assertThat(links.contains("/tests/new?compressor=1")).isEqualTo(role != Role.AUDITOR);
    }

    @Test
    void knowsNoOtherSite() {
        assertThat(SentForm.get(site, "/sites/9/cost").status()).isEqualTo(404);
    }
}

@OnH2
final class CostWebOnH2Tests extends CostWebTests {}

@OnPostgres
final class CostWebOnPostgresTests extends CostWebTests {}
