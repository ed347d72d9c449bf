package plantair.history.web;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.persistence.EntityManagerFactory;
import jakarta.servlet.http.Cookie;
import java.io.UnsupportedEncodingException;
import java.time.LocalDate;
import java.util.List;
import org.hibernate.SessionFactory;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.equipment.Compressor;
import plantair.instrument.Instrument;
import plantair.pumpup.FindingCode;
import plantair.site.Site;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.Plant;

abstract class HistoryPagesTests {

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Database database;

    @Autowired
    private MockMvcTester browser;

    @Autowired
    private EntityManagerFactory entities;

    @Autowired
    private HistoryWords words;

    private Plant plant;
    private Site site;

    @BeforeEach
    void emptyPlant() {
        database.wipe();
        plant = Plant.in(context);
    }

    @Test
    void leadsAnEmptyInstallationToItsFirstTest() {
        Document empty = page("/");
        plant.compressor(plant.site());
        database.recordPeople(); // a line in the chain, which the plant of a test leaves out
        Document started = page("/");

        assertThat(empty.select("ol a").eachAttr("href"))
                .containsExactly("/sites/new", "/compressors/new", "/receivers/new", "/tests/new");
        assertThat(empty.text()).contains("mvn spring-boot:run -Dspring-boot.run.profiles=demo");
        assertThat(empty.select("table")).isEmpty();
        assertThat(started.select("ol .status").size()).isEqualTo(2);
        assertThat(started.select("#machines tbody tr").text()).contains("C-1", "Never tested");
    }

    @Test
    void showsEachMachineWithItsLastTest() {
        Compressor compressor = testedFor(3);

        Document page = page("/");

        assertThat(page.select("#machines tbody th").text()).isEqualTo("C-1 North works, piston");
        assertThat(page.select("#machines tbody th a").attr("href")).isEqualTo("/compressors/" + compressor.id());
        assertThat(page.select("#machines td[data-label=Last test]").text()).isEqualTo("2026-04-05 71 days ago");
        assertThat(page.select("a[href=/tests/new?compressor=" + compressor.id() + "]")
                        .text())
                .isEqualTo("New test");
        assertThat(page.text()).doesNotContain("??");
    }

    @Test
    void putsTheWorstFirstAndTheUntestedLast() {
        site = plant.site();
        var even = plant.compressor(site, "EVEN");
        var worn = plant.compressor(site, "WORN");
        var drifts = plant.compressor(site, "DRIFTS");
        plant.compressor(site, "ALPHA-NEVER");
        var retired = plant.compressor(site, "A-RETIRED", false);
        for (var machine : List.of(even, worn, drifts, retired)) {
            plant.test(machine, "2026-01-05T14:00:00Z", "60.2", "60.8", "60.5");
        }
        plant.test(even, "2026-02-05T14:00:00Z", "60.4", "60.6", "60.5");
        plant.test(worn, "2026-02-05T14:00:00Z", "70.2", "70.8", "70.5");
        plant.test(drifts, "2026-02-05T14:00:00Z", "50", "60", "70");

        assertThat(tags("/")).containsExactly("DRIFTS", "WORN", "EVEN", "ALPHA-NEVER");
        assertThat(tags("/?show=ALL")).containsExactly("DRIFTS", "WORN", "EVEN", "ALPHA-NEVER", "A-RETIRED");
        assertThat(page("/").select("#machines tbody tr").first().text()).contains("■ runs drift", "runs not averaged");
    }

    @Test
    void showsOneSiteAlone() {
        var north = plant.site();
        var south = plant.site("Süd", "Europe/Berlin");
        plant.compressor(north, "N-1");
        plant.compressor(south, "S-1");

        assertThat(tags("/?site=" + south.id())).containsExactly("S-1");
        assertThat(tags("/?site=")).containsExactly("N-1", "S-1");
        assertThat(page("/?site=" + south.id()).select("#site option[selected]").text())
                .isEqualTo("Süd");
        assertThat(browser.get().uri("/?site=999")).hasStatusOk();
    }

    @Test
    void answersOddAddressesWithoutFailing() {
        Compressor compressor = testedFor(1);

        assertThat(browser.get().uri("/?site=x&show=x")).hasStatus(422);
        for (String path : List.of("/?show=ALL&", "/compressors/" + compressor.id() + "?")) {
            for (String number : List.of("0", "-1", "2", "2147483647")) {
                assertThat(browser.get().uri(path + "page=" + number))
                        .as(path + number)
                        .hasStatus(404);
            }
            assertThat(browser.get().uri(path + "page=x")).hasStatus(400);
        }
        assertThat(browser.get().uri("/compressors/999")).hasStatus(404);
        assertThat(browser.get().uri("/compressors/99999999999999999999")).hasStatus4xxClientError();
    }

    @Test
    void tellsTheDirectionOnlyWhenThereIsALine() {
        Compressor compressor = testedFor(2);
        Document two = page("/compressors/" + compressor.id());
        plant.test(compressor, "2026-04-05T14:00:00Z", "60.3", "60.7", "60.5");
        Document three = page("/compressors/" + compressor.id());

        assertThat(two.select("#direction .status").text()).isEqualTo("○ no trend yet");
        assertThat(two.select("#change").text()).contains("differs from the first by", "not a rate");
        assertThat(two.select("#line")).isEmpty();
        assertThat(three.select("#direction .status").text()).isEqualTo("○ cannot be told yet");
        assertThat(three.select("#change").text())
                .matches("By the line through 3 tests over 0\\.2 years the output changes by -?[\\d.]+ % a year"
                        + " \\(95 % interval -[\\d.]+ to [\\d.]+ %\\)\\. .*");
        assertThat(three.select("#line tr[data-piece=1]").size()).isGreaterThan(2);
    }

    @Test
    void callsALongFallFalling() {
        Compressor compressor = plant.compressor(plant.site());
        for (int year = 2018; year < 2027; year++) {
            int seconds = 60 + 3 * (year - 2018);
            plant.test(compressor, year + "-01-05T14:00:00Z", seconds + ".2", seconds + ".8", seconds + ".5");
        }

        Document page = page("/compressors/" + compressor.id());

        assertThat(page.select("#direction .status").text()).isEqualTo("▲ declining");
        assertThat(page.select("#flows tbody tr")).hasSize(9);
        assertThat(page("/").select("#machines .status").eachText()).contains("▲ declining");
    }

    @Test
    void takesTheFirstAveragedCurrentTestAsBaseline() {
        Compressor compressor = plant.compressor(plant.site());
        plant.test(compressor, "2025-01-05T14:00:00Z", "50", "60", "70");
        var wrong = plant.test(compressor, "2025-04-05T14:00:00Z", "20.2", "20.8", "20.5");
        var right = plant.plan(compressor)
                .on("2025-04-05T14:00:00Z")
                .runs("60.2", "60.8", "60.5")
                .supersede(wrong, "seconds of another machine");
        plant.test(compressor, "2025-07-05T14:00:00Z", "60.2", "60.8", "60.5");

        Document page = page("/compressors/" + compressor.id());

        assertThat(page.select("a[href=/tests/" + right.id() + "]").eachText()).contains("test 3 of 2025-04-05");
        assertThat(page.select("#flows tbody tr")).hasSize(3);
        assertThat(page.select("#flows tr[data-included=false]").text()).contains("2025-01-05", "runs not averaged");
        assertThat(page.select("#flows tr[data-included=false]").hasAttr("data-flow"))
                .isFalse();
        assertThat(page.select("#flows tbody tr").first().text()).contains("100.0 ± 2.5 %");
        assertThat(page.select("#tests tbody tr")).hasSize(4);
        assertThat(page.select("#tests .superseded").text())
                .contains("Test 2", "superseded by test 3: seconds of another machine");
        assertThat(page.select("#tests").text()).contains("corrects test 2: seconds of another machine");
    }

    @Test
    void keepsATestThatDoesNotShowTheMachineOffTheLine() {
        Compressor compressor = plant.compressor(plant.site());
        plant.plan(compressor).on("2025-12-05T14:00:00Z").anotherMachineOn().record();
        for (int month = 2; month < 5; month++) {
            plant.test(compressor, "2026-0" + month + "-05T14:00:00Z", "60.2", "60.8", "60.5");
        }

        Document page = page("/compressors/" + compressor.id());
        var kept = page.select("#flows tbody tr").last();

        assertThat(page.select("#flows tr[data-included=true] td:nth-child(6)").eachText())
                .hasSize(3)
                .allMatch(text -> text.matches("[\\d.]+"));
        assertThat(page.select("a[href=/tests/2]").eachText()).contains("test 2 of 2026-02-05");
        assertThat(page.select("#flows tr[data-included=false]")).containsExactly(kept);
        assertThat(kept.attr("data-flow")).isNotEmpty();
        assertThat(kept.attr("data-left-out")).isEqualTo("another machine was on");
        assertThat(kept.text())
                .contains("does not join the line: another machine was on")
                .doesNotContain("%");
        assertThat(page("/").select("#machines").text()).doesNotContain("does not join");
    }

    @Test
    void saysThatTheLastTestDoesNotJoinTheLine() {
        Compressor compressor = testedFor(3);
        String before =
                page("/compressors/" + compressor.id()).select("#change").text();
        plant.plan(compressor)
                .on("2026-05-05T14:00:00Z")
                .runs("80.2", "80.8", "80.5")
                .held("172.0 [psi]", "165.0 [psi]")
                .record();

        Document page = page("/compressors/" + compressor.id());

        assertThat(page.select("#change").text()).isEqualTo(before);
        assertThat(page.select("section").first().text())
                .contains("Last test, 2026-05-05: does not join the line and is not judged: leak added back");
        assertThat(page("/").select("#machines td[data-label=Of own baseline]").text())
                .endsWith("% test of 2026-04-05 does not join the line: leak added back");
    }

    @Test
    void showsARestatedResultBesideTheRecordedOne() {
        Compressor compressor = plant.compressor(plant.site());
        Instrument gauge = plant.gauge("G-1");
        plant.plan(compressor).with(gauge).record();
        String recorded = page("/compressors/" + compressor.id())
                .select("#flows td")
                .first()
                .text();
        plant.restate(gauge, LocalDate.parse("2026-03-01"), "K-7");

        String restated = page("/compressors/" + compressor.id())
                .select("#flows td")
                .first()
                .text();

        assertThat(recorded).matches("[\\d.]+");
        assertThat(restated)
                .matches("[\\d.]+ restated, " + recorded + " as recorded")
                .doesNotStartWith(recorded);
    }

    @Test
    void hasAShortWordForEveryFinding() {
        for (FindingCode code : FindingCode.values()) {
            assertThat(words.label("history.finding", code)).hasSizeBetween(1, 30);
        }
    }

    @Test
    void leadsToThePlanOfATest() {
        var site = plant.site();
        long inService = plant.compressor(site).id();
        long retired = plant.compressor(site, "C-0", false).id();

        assertThat(page("/compressors/" + inService)
                        .select("a[href=/compressors/" + inService + "/plan]")
                        .text())
                .isEqualTo("Plan a test");
        assertThat(page("/compressors/" + retired).select("a[href$=/plan]")).isEmpty();
    }

    @Test
    void showsDaysWhereTheTestWasMade() {
        Compressor compressor = plant.compressor(plant.site("Far", "Pacific/Auckland"));
        plant.test(compressor, "2026-06-14T20:00:00Z", "60.2", "60.8", "60.5");

        assertThat(page("/").select("#machines").text()).contains("2026-06-15 yesterday");
        assertThat(page("/compressors/" + compressor.id()).text()).contains("2026-06-15 08:00 NZST");
    }

    @Test
    void escapesNamesAndReasons() {
        Compressor compressor = plant.compressor(plant.site("<b>ß</b>", "UTC"), "<i>${7*7}");
        plant.test(compressor, "2026-01-05T14:00:00Z", "60.2", "60.8", "60.5");

        assertThat(page("/").select("#machines tbody th").text()).isEqualTo("<i>${7*7} <b>ß</b>, piston");
        assertThat(page("/compressors/" + compressor.id()).select("h1").text())
                .isEqualTo("Compressor <i>${7*7}, <b>ß</b>");
    }

    @Test
    void showsPlateAndRatingAsTyped() {
        Document page = page("/compressors/" + plant.compressor(plant.site()).id());

        assertThat(page.select("dl").text()).contains("Maker and model Two-stage piston", "Motor power 10 hp");
        assertThat(page.select("section table").last().text()).contains("175 psi", "35 cfm", "free air at the intake");
        assertThat(page.select("dl").text()).doesNotContain("Serial");
    }

    @Test
    void showsTheSameFlowOnBothPagesInThePersonsUnits() {
        Compressor compressor = testedFor(2);
        var litres = new Cookie("units", "KPA_LITRE");

        String overview = page("/", litres).select("#machines td.num").get(1).text();
        var row = page("/compressors/" + compressor.id(), litres)
                .select("#flows tbody tr")
                .first();

        assertThat(overview)
                .isEqualTo("%s ± %s at 1076 kPa(g)"
                        .formatted(
                                row.select("td").get(0).text(),
                                row.select("td").get(2).text()));
        assertThat(row.attr("data-flow")).isEqualTo(row.select("td").get(0).text());
        assertThat(page("/", litres).select("#machines thead").text()).contains("Free air delivered, L/s");
    }

    @Test
    void asksTheDatabaseAsOftenForManyMachines() {
        site = plant.site();
        addTested(26);
        long forMore = statementsFor("/");
        addTested(4);

        assertThat(statementsFor("/")).isEqualTo(forMore);
        assertThat(page("/").select("#machines tbody tr")).hasSize(25);
        assertThat(page("/?page=2").select("#machines tbody tr")).hasSize(5);
        assertThat(page("/?site=" + site.id()).select(".pager a").attr("href"))
                .isEqualTo("/?tag=&site=" + site.id() + "&standing=&show=IN_SERVICE&page=2");
    }

    private void addTested(int count) {
        for (int i = 0; i < count; i++) {
            Compressor compressor = plant.compressor(site, "C-" + count + "-" + i);
            plant.test(compressor, "2026-01-05T14:00:00Z", "60.2", "60.8", "60.5");
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

    private Compressor testedFor(int months) {
        Compressor compressor = plant.compressor(plant.site());
        for (int month = 2; month < 2 + months; month++) {
            plant.test(compressor, "2026-0" + month + "-05T14:00:00Z", "60.2", "60.8", "60.5");
        }
        return compressor;
    }

    private List<String> tags(String path) {
        return page(path).select("#machines tbody th a").eachText();
    }

    private Document page(String path, Cookie... cookies) {
        try {
            var request = browser.get().uri(path);
            var answer = (cookies.length == 0 ? request : request.cookie(cookies)).exchange();
            assertThat(answer).hasStatusOk();
            Document page = Jsoup.parse(answer.getResponse().getContentAsString());
            assertThat(page.text()).doesNotContain("??");
            return page;
        } catch (UnsupportedEncodingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}

@OnH2
final class HistoryPagesOnH2Tests extends HistoryPagesTests {}

@OnPostgres
final class HistoryPagesOnPostgresTests extends HistoryPagesTests {}
