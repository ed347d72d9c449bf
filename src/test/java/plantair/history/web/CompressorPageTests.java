package plantair.history.web;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.persistence.EntityManagerFactory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.UUID;
import org.hibernate.SessionFactory;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.context.MessageSource;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.equipment.Compressor;
import plantair.maintenance.EventKind;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.Plant;
import plantair.testing.SentForm;
import plantair.trend.Crossing;
import plantair.trend.Standing;
import plantair.trend.StepVerdict;
import plantair.trend.TrendCode;

/** What the page of a compressor says of its trend, its limits, the work done and its baseline. */
abstract class CompressorPageTests {

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Database database;

    @Autowired
    private MockMvcTester site;

    @Autowired
    private EntityManagerFactory entities;

    @Autowired
    private MessageSource messages;

    private Plant plant;
    private Compressor compressor;

    @BeforeEach
    void startWithOneMachine() {
        database.wipe();
        plant = Plant.in(context);
        compressor = plant.compressor(plant.site());
    }

    /** One test in January and one in July of each year; times of its runs grow by so many seconds a test. */
    private void testHalfYearly(int fromYear, int tests, double seconds, double growth) {
        for (int i = 0; i < tests; i++) {
            double mid = seconds + i * growth;
            String day = (fromYear + i / 2) + (i % 2 == 0 ? "-01" : "-07") + "-05T14:00:00Z";
            plant.test(compressor, day, text(mid - 0.3), text(mid), text(mid + 0.3));
        }
    }

    private static String text(double seconds) {
        return String.valueOf(Math.round(10 * seconds) / 10.0);
    }

    private Document page() {
        Document page = SentForm.get(site, "/compressors/" + compressor.id()).page();
        assertThat(page.text()).doesNotContain("??").doesNotContainPattern("\\{\\d");
        return page;
    }

    private static String note(Document page, String code) {
        return page.select("#notes [data-code=" + code + "]").text();
    }

    private static String level(Document page, String code) {
        return page.select("#levels tr[data-level=" + code + "]").text();
    }

    @Test
    void saysOfASteadyMachineWhichDeclineIsRuledOut() {
        testHalfYearly(2020, 12, 60, 0);

        Document page = page();

        assertThat(page.select("#direction .status").text()).isEqualTo("○ no decline seen");
        assertThat(note(page, "RULED_OUT"))
                .matches("A decline faster than [\\d.]+ % a year is ruled out \\(95 %\\)\\.");
        assertThat(note(page, "DETECTABLE")).contains("four times in five");
        assertThat(note(page, "RANKS_AGREE")).isNotEmpty();
        assertThat(page.select("#standing .status").text()).isEqualTo("● above every limit");
    }

    @Test
    void foretellsNothingWhereNoDeclineIsSignalled() {
        testHalfYearly(2020, 12, 60, 0.05);

        Document page = page();

        assertThat(page.select("#direction .status").text()).isEqualTo("○ no decline seen");
        assertThat(page.select("#line tr[data-forecast=true]")).isEmpty();
        assertThat(page.select("#levels").text()).doesNotContain("about");
        assertThat(page.select("figcaption").text()).doesNotContain("beyond the last test");
    }

    @Test
    void foretellsWhenAWornMachineReachesItsLimits() {
        testHalfYearly(2018, 16, 60, 0.5);

        Document page = page();

        assertThat(page.select("#direction .status").text()).isEqualTo("▲ declining");
        assertThat(page.select("#standing .status").text()).isEqualTo("▲ plan the work");
        assertThat(level(page, "WATCH")).endsWith("already below");
        assertThat(level(page, "ACT"))
                .matches(
                        "act below 80 % [\\d.]+ about \\w+ 20\\d\\d; between \\w+ 20\\d\\d and \\w+ 20\\d\\d \\(80 %\\)");
        assertThat(page.select("details li").text()).matches(".*act below, 80 %: between \\w+ 20\\d\\d and .*");
        assertThat(page.select("#line tr[data-forecast=true]").size()).isGreaterThan(2);
        assertThat(page.select("#line tr[data-forecast=true]").first().attr("data-date"))
                .isEqualTo("2025-07-05");
    }

    @Test
    void carriesTheLineOnByTheLengthOfTheRecordAtMost() {
        testHalfYearly(2021, 8, 60, 0.25);

        Document page = page();
        var carried = page.select("#line tr[data-forecast=true]");

        assertThat(page.select("#direction .status").text()).isIn("▲ declining", "▲ signs of decline");
        // first test 2021-01-05, last 2024-07-05, 1277 days; as many again
        assertThat(carried.last().attr("data-date")).isEqualTo("2028-01-03");
    }

    @Test
    void asksForARepeatBeforeOneTestCrossesALimit() {
        testHalfYearly(2020, 4, 60, 0);
        plant.test(compressor, "2022-01-05T14:00:00Z", "70.2", "70.5", "70.8");

        assertThat(page().select("#standing .status").text()).isEqualTo("▲ repeat the test");
    }

    @Test
    void saysWhetherARepairHelped() {
        testHalfYearly(2020, 6, 75, 0);
        plant.event(compressor, LocalDate.of(2022, 12, 1), EventKind.VALVES, true, "Plates new");
        testHalfYearly(2023, 6, 60, 0);

        Document page = page();

        assertThat(page.select("#events tbody tr").text())
                .matches("A 2022-12-01 valves by Ann Plates new ● changed Output changed by \\+[\\d.]+ %"
                        + " \\(95 % interval \\+[\\d.]+ to \\+[\\d.]+ %\\)\\.");
        assertThat(page.select("#line tr[data-piece=1]").last().attr("data-date"))
                .isEqualTo("2022-11-30");
        assertThat(page.select("#line tr[data-piece=2]").first().attr("data-date"))
                .isEqualTo("2022-12-01");
        assertThat(page.select(".notice")).isEmpty();
    }

    @Test
    void asksForATestAfterWorkThatMayHaveChangedTheOutput() {
        testHalfYearly(2023, 4, 60, 0);
        plant.event(compressor, LocalDate.of(2025, 3, 1), EventKind.BELT, true, "");
        Document untested = page();
        plant.test(compressor, "2025-03-01T14:00:00Z", "60.2", "60.5", "60.8");

        assertThat(untested.select(".notice").text()).startsWith("Test again: nothing was tested since this work");
        assertThat(untested.select(".notice a").attr("href")).isEqualTo("/tests/new?compressor=1");
        assertThat(untested.select("#events .status").text()).isEqualTo("○ not tested since");
        assertThat(page().select(".notice")).isEmpty();
    }

    @Test
    void doesNotAskForATestAfterOtherWork() {
        testHalfYearly(2023, 4, 60, 0);
        plant.event(compressor, LocalDate.of(2025, 3, 1), EventKind.DRAIN, false, "");

        Document page = page();

        assertThat(page.select(".notice")).isEmpty();
        assertThat(page.select("#events tbody tr").text()).endsWith("not taken to change the output");
        assertThat(page.select("#events tr[data-step]").attr("data-step")).isEqualTo("false");
    }

    @Test
    void leadsToTheWorkDone() {
        assertThat(page().select("#content a").eachAttr("href"))
                .contains("/compressors/1/events/new", "/compressors/1/events")
                .doesNotContain("/compressors/1/baseline");
        assertThat(page().select("section[aria-labelledby=work]").text()).contains("No work is on record");
    }

    @Test
    void leavesOutATestFarFromThePressureOfTheBaseline() {
        testHalfYearly(2023, 4, 60, 0);
        var away = plant.plan(compressor)
                .on("2025-01-05T14:00:00Z")
                .band("60.0 [psi]", "92.0 [psi]")
                .record();

        Document page = page();

        assertThat(note(page, "OTHER_PRESSURE"))
                .startsWith("One test was made too far")
                .endsWith("2025-01-05.");
        assertThat(page.select("#notes a").attr("href")).isEqualTo("/tests/" + away.id());
        assertThat(page.select("#flows tr[data-included=false]").attr("data-left-out"))
                .isEqualTo("too far from the pressure of the baseline");
    }

    @Test
    void bringsATestNearThePressureOfTheBaselineThere() {
        testHalfYearly(2023, 4, 60, 0);
        plant.plan(compressor)
                .on("2025-01-05T14:00:00Z")
                .band("130.0 [psi]", "162.0 [psi]")
                .runs("60.2", "60.5", "60.8")
                .record();

        var row = page().select("#flows tbody tr").first();

        assertThat(row.select("td").first().text())
                .isEqualTo(row.select("td").first().ownText() + " " + row.attr("data-flow")
                        + " at the pressure of the baseline");
        assertThat(row.attr("data-included")).isEqualTo("true");
        assertThat(note(page(), "SOURCE_GAUGE")).startsWith("Since 2025-01-05 ");
    }

    @Test
    void showsWhoChoseWhichBaselineAndWhy() {
        testHalfYearly(2024, 3, 60, 0);
        Document before = page();
        chooseBaseline("2", "First one was wet");
        chooseBaseline("3", "New airend");

        Document page = page();

        assertThat(before.select("section[aria-labelledby=baseline] p").first().text())
                .isEqualTo("The first test that joins the trend: test 1 of 2024-01-05");
        assertThat(page.select("section[aria-labelledby=baseline] p").first().text())
                .isEqualTo("In force: test 3 of 2025-01-05");
        assertThat(page.select("#baselines tbody tr").eachText())
                .containsExactly(
                        "Test 3 2025-01-05 2026-06-15 by Ann (ann) New airend in force",
                        "Test 2 2024-07-05 2026-06-15 by Ann (ann) First one was wet counts for tests before the next choice");
        assertThat(page.select("#levels tr[data-level=BASELINE] td").get(1).text())
                .isNotEmpty();
    }

    private void chooseBaseline(String test, String reason) {
        SentForm.to("/compressors/1/baseline")
                .with("submission", UUID.randomUUID().toString())
                .with("test", test)
                .with("event", "")
                .with("edit.reason", reason)
                .post(site);
    }

    @Test
    void saysThatACorrectedTestIsNoBaselineAnyMore() {
        testHalfYearly(2024, 2, 60, 0);
        var chosen = plant.test(compressor, "2025-07-05T14:00:00Z", "60.2", "60.5", "60.8");
        chooseBaseline("3", "New airend");
        plant.plan(compressor)
                .on("2025-07-05T14:00:00Z")
                .runs("61.2", "61.5", "61.8")
                .supersede(chosen, "slip");

        Document page = page();

        assertThat(page.select("#baselines tbody td").last().text()).startsWith("counts no more");
        assertThat(page.select("section[aria-labelledby=baseline] p").first().text())
                .endsWith("test 1 of 2024-01-05");
    }

    @Test
    void tellsWhoCannotSeeTheChartWhatItShows() {
        testHalfYearly(2020, 12, 60, 0);

        assertThat(page().select("figure").attr("data-summary"))
                .startsWith("Chart of 12 tests from 2020-01-05 to 2025-07-05. Trend: no decline seen.");
        for (var table : page().select("main table")) {
            assertThat(table.select("caption").text()).isNotEmpty();
        }
    }

    @Test
    void asksTheDatabaseAsOftenForManyTestsAsForFew() {
        testHalfYearly(2020, 3, 60, 0);
        long few = statements();
        testHalfYearly(2022, 20, 60, 0);

        assertThat(statements()).isEqualTo(few);
    }

    private long statements() {
        var statistics = entities.unwrap(SessionFactory.class).getStatistics();
        statistics.setStatisticsEnabled(true);
        statistics.clear();
        page();
        long statements = statistics.getPrepareStatementCount();
        statistics.setStatisticsEnabled(false);
        return statements;
    }

    @Test
    void hasASentenceForEveryCode() throws IOException {
        String catalogue = Files.readString(Path.of("docs/findings.md"));
        for (TrendNote note : TrendNote.values()) {
            assertThat(catalogue).contains("| " + note + " |");
            assertThat(said("history.note." + note)).isNotEmpty();
        }
        for (TrendCode code : TrendCode.values()) {
            assertThat(said("history.trend." + code)).isNotEmpty();
            assertThat(said("history.trend.says." + code)).isNotEmpty();
        }
        for (Standing standing : Standing.values()) {
            assertThat(said("history.standing." + standing)).isNotEmpty();
            assertThat(said("history.standing.says." + standing)).isNotEmpty();
        }
        for (Crossing.Code code : Crossing.Code.values()) {
            assertThat(said("history.forecast." + code)).isNotEmpty();
        }
        for (StepVerdict.Code code : StepVerdict.Code.values()) {
            assertThat(said("history.step." + code)).isNotEmpty();
            assertThat(said("history.step.says." + code)).isNotEmpty();
        }
    }

    private String said(String key) {
        return messages.getMessage(key, new Object[] {1, 1, 1, 1, 1}, Locale.ENGLISH);
    }
}

@OnH2
final class CompressorPageOnH2Tests extends CompressorPageTests {}

@OnPostgres
final class CompressorPageOnPostgresTests extends CompressorPageTests {}
