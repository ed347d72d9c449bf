package plantair.history.web;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.persistence.EntityManagerFactory;
import java.time.Instant;
import java.util.List;
import org.hibernate.SessionFactory;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.equipment.Compressor;
import plantair.site.Site;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.Plant;
import plantair.testing.SentForm;

/** What the overview says of each machine, the limits of a site, and the list of checks. */
abstract class OverviewPagesTests {

    private static final String[] NEW = {"60.2", "60.8", "60.5"};
    /** About 93 % of new. */
    private static final String[] WORN = {"64.7", "65.3", "65.0"};

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Database database;

    @Autowired
    private MockMvcTester browser;

    @Autowired
    private EntityManagerFactory entities;

    private Plant plant;
    private Site site;

    @BeforeEach
    void emptyPlant() {
        database.wipe();
        plant = Plant.in(context);
        site = plant.site();
    }

    private Compressor tested(String tag, String[]... tests) {
        Compressor compressor = plant.compressor(site, tag);
        for (int i = 0; i < tests.length; i++) {
            plant.test(compressor, "2026-0" + (2 + i) + "-05T14:00:00Z", tests[i]);
        }
        return compressor;
    }

    private Document page(String path) {
        var answer = SentForm.get(browser, path);
        assertThat(answer.status()).as(path).isEqualTo(200);
        assertThat(answer.page().text()).doesNotContain("??");
        return answer.page();
    }

    private static String cell(Document page, String label) {
        return page.select("#machines tbody tr")
                .first()
                .select("td[data-label=" + label + "]")
                .text();
    }

    private List<String> tags(String path) {
        return page(path).select("#machines tbody th a").eachText();
    }

    @Test
    void saysWhereAMachineStandsAndWhatToDoNext() {
        tested("C-1", NEW, WORN, WORN);

        Document page = page("/");

        assertThat(cell(page, "State")).isEqualTo("▲ watch");
        assertThat(cell(page, "Of own baseline")).startsWith("93").endsWith("%");
        assertThat(cell(page, "Next step")).startsWith("look for the cheapest cause first");
    }

    @Test
    void drawsTheLastTestsAndSaysThemInWords() {
        Compressor compressor = tested("C-1", NEW, WORN, WORN);
        plant.plan(compressor)
                .on("2026-05-05T14:00:00Z")
                .held("172.0 [psi]", "165.0 [psi]")
                .record();

        var line = page("/").select("#machines svg[role=img]");

        assertThat(line.select("circle")).hasSize(4);
        assertThat(line.select("circle.left-out")).hasSize(1);
        assertThat(line.select("polyline").attr("points").split(" ")).hasSize(3);
        assertThat(line.attr("aria-label")).matches("Percent of baseline, oldest first: 100, 93, 93, \\d+ left out");
    }

    @Test
    void callsForARepeatAfterOneLowTest() {
        tested("C-1", NEW, NEW, WORN);

        assertThat(cell(page("/"), "State")).isEqualTo("▲ repeat the test");
        assertThat(cell(page("/"), "Next step")).startsWith("repeat the test");
    }

    @Test
    void saysWhenASoundMachineIsDueAgain() {
        tested("C-1", NEW, NEW);

        assertThat(cell(page("/"), "State")).isEqualTo("● above every limit");
        assertThat(cell(page("/"), "Next step")).startsWith("test again, due since 2026-06-05");
    }

    @Test
    void putsAHazardFirstAndKeepsItInSight() {
        tested("WORN", NEW, WORN, WORN);
        Compressor sound = tested("SOUND", NEW);
        plant.plan(sound)
                .on("2026-03-05T14:00:00Z")
                .band("168.0 [psi]", "205.0 [psi]")
                .record();

        assertThat(tags("/")).containsExactly("SOUND", "WORN");
        assertThat(cell(page("/"), "State")).startsWith("■ above allowable pressure");
        assertThat(cell(page("/"), "Next step")).startsWith("keep below the receiver’s plate pressure");
    }

    @Test
    void showsTheMachinesOfOneState() {
        tested("WORN", NEW, WORN, WORN);
        tested("SOUND", NEW, NEW);
        plant.compressor(site, "NEVER");

        assertThat(tags("/?standing=WATCH")).containsExactly("WORN");
        assertThat(tags("/?standing=NOT_KNOWN")).containsExactly("NEVER");
        assertThat(tags("/?site=&standing=&show=ALL")).containsExactly("WORN", "SOUND", "NEVER");
        assertThat(page("/").select("#site option, #standing option").eachText())
                .contains("All sites", "All states", "watch")
                .doesNotContain("Choose…");
    }

    @Test
    void asksTheDatabaseAsOftenForManyTests() {
        Compressor compressor = plant.compressor(site);
        record(compressor, 0, 10);
        long forTen = statementsFor("/");
        record(compressor, 10, 200);

        assertThat(statementsFor("/")).isEqualTo(forTen).isLessThanOrEqualTo(5);
        assertThat(page("/").select("#machines circle")).hasSize(12);
    }

    private void record(Compressor compressor, int from, int to) {
        var first = Instant.parse("2020-01-05T14:00:00Z");
        for (int i = from; i < to; i++) {
            plant.test(compressor, first.plusSeconds(7 * 86_400L * i).toString(), NEW);
        }
    }

    private long statementsFor(String path) {
        var statistics = entities.unwrap(SessionFactory.class).getStatistics();
        statistics.setStatisticsEnabled(true);
        statistics.clear();
        page(path);
        long statements = statistics.getPrepareStatementCount();
        statistics.setStatisticsEnabled(false);
        return statements;
    }

    private SentForm limits(String watch, String plan, String act) {
        return SentForm.to("/sites/" + site.id() + "/limits")
                .with("watchBelow", watch)
                .with("planBelow", plan)
                .with("actBelow", act)
                .with("edit.reason", "ours")
                .with("edit.version", "-1");
    }

    @Test
    void changesTheLimitsOfASiteWithAReason() {
        tested("C-1", NEW, WORN, WORN);
        String address = page("/sites/" + site.id()).select("a[href$=/limits]").attr("href");
        Document before = page(address);

        var sent = limits("99", "98", "95").post(browser);

        assertThat(before.text()).contains("our own defaults", "No published rule", "about 80 %");
        assertThat(before.select("#watchBelow").val()).isEqualTo("95");
        assertThat(sent.redirect()).isEqualTo(address);
        assertThat(page(address).text()).contains("has set its own limits");
        assertThat(cell(page("/"), "State")).isEqualTo("■ act");
        var change = page("/changes").select("tbody tr").first();
        assertThat(change.text()).contains("Limits", "North works", "act below: 95 % of baseline", "ours");
        assertThat(change.select("a").attr("href")).isEqualTo(address);
    }

    @Test
    void refusesLimitsOutOfOrderUnsignedOrUnchanged() {
        assertThat(limits("90", "95", "80").post(browser).error("planBelow")).contains("95 must be less than 90");
        assertThat(limits("95", "80", "80").post(browser).error("actBelow")).contains("80 must be less than 80");
        assertThat(limits("101", "90", "80").post(browser).error("watchBelow")).contains("from 1 to 100");
        assertThat(limits("94.5", "90", "80").post(browser).error("watchBelow")).contains("not a whole number");
        assertThat(limits("96", "90", "80")
                        .with("edit.reason", "")
                        .post(browser)
                        .error("edit.reason"))
                .isNotEmpty();
        assertThat(limits("95", "90", "80").post(browser).status()).isEqualTo(422);
        assertThat(limits("96", "90", "80")
                        .at("/sites/999/limits")
                        .post(browser)
                        .status())
                .isEqualTo(404);
    }

    @Test
    void showsWhatSomebodyElseSetMeanwhile() {
        limits("96", "90", "80").post(browser);

        var late = limits("97", "90", "80").post(browser);

        assertThat(late.status()).isEqualTo(409);
        assertThat(late.text()).contains("watch below 96 % of baseline 97 % of baseline");
        assertThat(late.typed("watchBelow")).isEqualTo("97");
    }

    @Test
    void listsTheCheapestChecksWhenOutputIsDown() {
        Compressor compressor = tested("C-1", NEW, NEW, WORN);

        var machine = page("/compressors/" + compressor.id()).select("#checks li");

        assertThat(machine.select("> strong").eachText())
                .startsWith("Drain the receiver")
                .endsWith("Have the piston rings and cylinders looked at");
        assertThat(machine.text())
                .contains(
                        "this test names no gauge", "no static hold is recorded", "Lock out", "Qualified people only");
        assertThat(page("/tests/3").select("#checks li").eachText()).isEqualTo(machine.eachText());
        assertThat(page("/tests/2").select("#checks")).isEmpty();
    }

    @Test
    void listsNoChecksForASoundMachine() {
        Compressor compressor = tested("C-1", NEW, WORN, NEW);

        assertThat(page("/compressors/" + compressor.id()).select("#checks")).isEmpty();
        assertThat(page("/tests/2").select("#checks")).hasSize(1);
    }
}

@OnH2
final class OverviewPagesOnH2Tests extends OverviewPagesTests {}

@OnPostgres
final class OverviewPagesOnPostgresTests extends OverviewPagesTests {}
