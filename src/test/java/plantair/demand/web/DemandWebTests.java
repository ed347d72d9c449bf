package plantair.demand.web;

import static org.assertj.core.api.Assertions.assertThat;
import static plantair.testing.DemandForms.BLOW_OFF;
import static plantair.testing.DemandForms.CHOICE;
import static plantair.testing.DemandForms.FLUSH;
import static plantair.testing.DemandForms.NOZZLE;
import static plantair.testing.DemandForms.WRENCHES;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.account.Role;
import plantair.demand.DemandItems;
import plantair.demand.SiteBalances;
import plantair.equipment.Compressor;
import plantair.site.Site;
import plantair.testing.Database;
import plantair.testing.LeakForms;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.People;
import plantair.testing.Plant;
import plantair.testing.SentForm;

/** What takes air at a site, as recorded and as shown. */
abstract class DemandWebTests {

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @Autowired
    private ApplicationContext context;

    @Autowired
    private DemandItems items;

    @Autowired
    private SiteBalances balances;

    @Autowired
    private JdbcTemplate jdbc;

    private Site works;
    private Compressor compressor;

    @BeforeEach
    void aPlant() {
        database.wipe();
        Plant plant = Plant.in(context);
        works = plant.site();
        compressor = plant.compressor(works);
        plant.receiver(works);
    }

    private void send(SentForm form) {
        var answer = form.post(site);
        assertThat(answer.status()).as(answer.text()).isEqualTo(302);
    }

    private void tested() {
        Plant.in(context).test(compressor, "2026-05-05T14:00:00Z", "60.2", "60.8", "60.5");
    }

    private SentForm.Answer page() {
        return SentForm.get(site, "/sites/1/supply");
    }

    private String item(String label) {
        return page().page().select("#demand tr[data-label=" + label + "]").text();
    }

    @Test
    void keepsWhatWasTyped() {
        send(WRENCHES.with("air.flow", "6.00", "[cft_i]/min").with("note", "bay 3"));

        var facts = items.findById(1L).orElseThrow().facts();

        assertThat(facts.flow().number()).isEqualTo("6.00");
        assertThat(facts.pieces()).isEqualTo(3);
        assertThat(facts.useFactor().toString()).isEqualTo("20 %");
        assertThat(facts.note()).isEqualTo("bay 3");
        assertThat(jdbc.queryForObject("select reason from change_record where kind = 'DEMAND_ITEM'", String.class))
                .isEqualTo("registered");
    }

    /** By hand: 3 × 6 × 0.2 = 3.6, at 600 ft a little more: (90 + 14.38)/(90 + 14.70) × 14.70/14.38 = 1.0189. */
    @Test
    void tellsTheAirOfAToolAtTheHeightOfTheSite() {
        send(WRENCHES);

        assertThat(item("Wrenches")).contains("3 × (6.11 ± 0.61)", "20 %", "3.67");
    }

    /** Orifice table of a trade handbook, see ChokedNozzleReferenceTests: 1/8 in at 60 psi 16.9, times 0.61 is 10.3. */
    @Test
    void tellsTheAirOfADrilledHole() {
        send(BLOW_OFF);

        assertThat(item("Blow-off")).containsPattern("10\\.[345]\\d* ± 0\\.5");
    }

    /** 12 s of 600 s: 2 %. */
    @Test
    void countsAnEventByItsShareOfTime() {
        send(FLUSH);

        assertThat(item("Back-flush")).contains("2.0 %", "2.00");
        assertThat(balances.events(works))
                .singleElement()
                .satisfies(event ->
                        assertThat(event.facts().eventEvery().toString()).isEqualTo("10 min"));
    }

    @Test
    void takesASiteReserveWhereAnItemNamesNone() {
        send(WRENCHES);
        send(NOZZLE);
        send(CHOICE.with("reserve", "20", "%"));

        assertThat(item("Wrenches")).contains(" 20 % 4.40");
        assertThat(page().page().select("#demand tr[data-label='Blast room']").text())
                .contains("50 % (trade)");
    }

    @Test
    void changesAnItemWithAReasonAndTakesItOutOfUse() {
        send(NOZZLE);

        var without = NOZZLE.at("/demand/1")
                .with("edit.version", "0")
                .with("inService", "")
                .post(site);
        assertThat(without.error("edit.reason")).isNotEmpty();
        send(NOZZLE.at("/demand/1")
                .with("edit.version", "0")
                .with("edit.reason", "blast room closed")
                .with("inService", ""));

        assertThat(page().page().select("#demand")).isEmpty();
        assertThat(SentForm.get(site, "/sites/1/demand").text()).contains("Blast room", "out of use");
        assertThat(SentForm.get(site, "/changes").page().text()).contains("blast room closed", "in service: no");
        assertThat(SentForm.get(site, "/demand/1").redirect()).isEqualTo("/sites/1/demand#item-1");
    }

    @Test
    void refusesALabelTwiceAndAStaleForm() {
        send(NOZZLE);

        assertThat(NOZZLE.with("label", "BLAST room").post(site).error("label")).isNotEmpty();
        assertThat(NOZZLE.at("/demand/1")
                        .with("edit.version", "7")
                        .with("edit.reason", "x")
                        .post(site)
                        .status())
                .isEqualTo(409);
    }

    @ParameterizedTest
    @CsvSource({
        "BLAST_NOZZLE, air.nozzle, '', air.nozzle",
        "BLAST_NOZZLE, air.nozzle, NO_99, air.nozzle",
        "BLAST_NOZZLE, air.pressure.number, 45, air.pressure",
        "BLAST_NOZZLE, air.pressure.number, 1e3, air.pressure",
        "BLAST_NOZZLE, air.flow.number, 5, air.flow",
        "BLAST_NOZZLE, eventLength.number, 5, eventLength",
        "BLAST_NOZZLE, pieces, 0, pieces",
        "BLAST_NOZZLE, pieces, 1.5, pieces",
        "BLAST_NOZZLE, useFactor.number, 101, useFactor",
        "BLAST_NOZZLE, useFactor.number, -1, useFactor",
        "BLAST_NOZZLE, reserve.number, -1, reserve",
        "BLAST_NOZZLE, reserve.number, 1001, reserve",
        "BLAST_NOZZLE, uncertainty.number, 0, uncertainty",
        "BLAST_NOZZLE, label, '', label",
        "BLAST_NOZZLE, air.pressure.unit, m, air.pressure",
        "TOOL, air.nozzle, NO_5, air.nozzle",
        "EVENT, eventEvery.number, '', eventEvery",
        "STEAM, note, x, kind"
    })
    void refusesWhatCannotBeAndKeepsItTyped(String kind, String field, String typed, String wrong) {
        var base = kind.equals("TOOL") ? WRENCHES : kind.equals("EVENT") ? FLUSH : NOZZLE.with("kind", kind);

        var answer = base.with(field, typed).post(site);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.error(wrong)).isNotEmpty();
        assertThat(items.count()).isZero();
    }

    @Test
    void refusesAFigureOfSeaLevelWithoutAPressureAndAnEventLongerThanItsInterval() {
        assertThat(WRENCHES.with("air.pressure.number", "").post(site).error("air.pressure"))
                .contains("sea level");
        assertThat(FLUSH.with("eventEvery", "5", "s").post(site).error("eventEvery"))
                .contains("12 s");
        assertThat(BLOW_OFF.with("air.pressure", "10", "[psi]").post(site).error("air.pressure"))
                .contains("not choked");
        assertThat(WRENCHES.with("air.basis", "DISPLACEMENT").post(site).error("air.basis"))
                .isNotEmpty();
    }

    @Test
    void asksAboutAFlowThatNoToolHas() {
        var asked = WRENCHES.with("air.flow", "60000", "[cft_i]/min").post(site);

        assertThat(asked.warning("air.flow")).contains("60000 cfm");
        send(WRENCHES.with("air.flow", "60000", "[cft_i]/min").with("confirmed", asked.token()));
    }

    @Test
    void letsTechniciansRecordItemsManagersChooseAndAuditorsRead() {
        assertThat(NOZZLE.post(site, People.of(Role.TECHNICIAN)).status()).isEqualTo(302);
        assertThat(CHOICE.post(site, People.of(Role.TECHNICIAN)).status()).isEqualTo(403);
        assertThat(CHOICE.post(site, People.of(Role.MANAGER)).status()).isEqualTo(302);
        assertThat(WRENCHES.post(site, People.of(Role.AUDITOR)).status()).isEqualTo(403);

        var read = SentForm.get(site, "/sites/1/supply", People.of(Role.AUDITOR));
        assertThat(read.status()).isEqualTo(200);
        assertThat(read.page().select("a[href*='/demand/new'], a[href*='/edit']"))
                .isEmpty();
        var choices = SentForm.get(site, "/sites/1/supply/choices", People.of(Role.AUDITOR));
        assertThat(choices.text()).contains("working pressure: 100 psi");
        assertThat(choices.page().select("main form")).isEmpty();
    }

    @Test
    void keepsTheChoicesOfASiteAndWhyTheyChanged() {
        send(CHOICE.with("standby", "1"));

        assertThat(again().with("standby", "1").post(site).status())
                .as("nothing would change")
                .isEqualTo(422);
        assertThat(again().with("standby", "7").post(site).error("standby")).isNotEmpty();
        assertThat(again().with("leaksFrom", "NONE").post(site).error("leaks")).isNotEmpty();
        assertThat(again().with("leaks.number", "").post(site).error("leaks")).isNotEmpty();
        assertThat(again().with("edit.reason", "").post(site).error("edit.reason"))
                .isNotEmpty();
        assertThat(CHOICE.post(site).status()).as("a form from before").isEqualTo(409);
        assertThat(SentForm.get(site, "/changes").page().text()).contains("on standby: C-1", "first look");
        send(again().with("edit.reason", "runs again"));
        assertThat(jdbc.queryForObject("select count(*) from supply_standby", Long.class))
                .isZero();
    }

    /** The form as it is opened after the first choice. */
    private SentForm again() {
        var page = SentForm.get(site, "/sites/1/supply/choices");
        return CHOICE.with("edit.version", page.typed("edit.version"));
    }

    @Test
    void namesMachinesThatDoNotCountAndWhatTheyLack() {
        send(WRENCHES);
        assertThat(page().text()).contains("No machine of this site counts", "C-1: no test of it counts");
        assertThat(page().page().select(".lead").text()).isEqualTo("○ not known yet");

        tested();
        assertThat(page().text()).contains("pressure of the newest test").contains("none known");
        send(CHOICE);
        assertThat(page().text()).contains("C-1: tested on 2026-05-05 at 156.0 psig, more than 1.5 bar");

        send(CHOICE.with("workingPressure", "150", "[psi]").with("standby", "1").with("edit.version", "0"));
        assertThat(page().text()).contains("C-1: on standby");
    }

    /** By hand: 210 · 90/500 = 37.8 cfm at 100 psig, at 110 psig 37.8 · (110 + 14.38)/(100 + 14.38) = 41.1. */
    @Test
    void takesTheNewestLeakTestAtThePressureOfTheSupply() {
        Plant.in(context)
                .plan(compressor)
                .on("2026-05-05T14:00:00Z")
                .band("90.0 [psi]", "110.0 [psi]")
                .record();
        send(WRENCHES);
        send(LeakForms.loadTimes("90 410", "90 410", "90 410", "90 410", "90 410"));
        send(CHOICE.with("workingPressure", "110", "[psi]")
                .with("leaksFrom", "TEST")
                .with("leaks.number", "")
                .with("leaksUncertainty.number", ""));

        var leaks = page().page().select("#supply tr[data-part=leaks]");

        assertThat(leaks.text()).contains("41.1", "leak test of 2026-06-14, at 100.0 psig");
        assertThat(leaks.select("a").attr("href")).isEqualTo("/leak-tests/1");
        assertThat(page().text()).contains("Leaks take all that the machines deliver");
    }

    @Test
    void listsTheSitesOrGoesStraightToTheOnlyOne() {
        assertThat(SentForm.get(site, "/supply").redirect()).isEqualTo("/sites/1/supply");
        Plant.in(context).site("South works", "America/Chicago");

        var list = SentForm.get(site, "/supply");

        assertThat(list.status()).isEqualTo(200);
        assertThat(list.text()).contains("North works", "South works", "○ not known yet");
        assertThat(SentForm.get(site, "/supply?page=2").status()).isEqualTo(404);
    }

    @Test
    void answersOddQuestionsBesideTheirFields() {
        tested();
        send(WRENCHES);

        var odd = SentForm.get(site, "/sites/1/supply?kind=EVENT&pieces=x&out=99");

        assertThat(odd.status()).isEqualTo(422);
        assertThat(odd.error("kind")).isNotEmpty();
        assertThat(odd.error("out")).isNotEmpty();
        assertThat(SentForm.get(site, "/sites/9/supply").status()).isEqualTo(404);
        assertThat(SentForm.get(site, "/demand/9").status()).isEqualTo(404);
    }

    /** An import can bring what no form takes: it is not counted, and the page stands. */
    @Test
    void standsWithAnItemWhoseAirCannotBeTold() {
        tested();
        send(NOZZLE);
        jdbc.update("update demand_item set pressure = '20 [psi]'");
        assertThat(page().text()).contains("Its air cannot be told");
        jdbc.update("update demand_item set pressure = '100 [psi]', use_factor = '300 %'");

        assertThat(page().status()).isEqualTo(200);
        assertThat(page().text()).contains("Its air cannot be told");
    }
}

@OnH2
final class DemandOnH2WebTests extends DemandWebTests {}

@OnPostgres
final class DemandOnPostgresWebTests extends DemandWebTests {}
