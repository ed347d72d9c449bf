package plantair.history.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import java.time.LocalDate;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import plantair.equipment.Compressor;
import plantair.maintenance.EventKind;
import plantair.testing.Browser;
import plantair.testing.Database;
import plantair.testing.NeedsBrowser;
import plantair.testing.OnH2;
import plantair.testing.Plant;
import plantair.testing.Visit;

/** The chart of a compressor in a real browser. */
@OnH2
@NeedsBrowser
final class CompressorChartTests {

    private static final String SCROLLS_SIDEWAYS =
            "document.documentElement.scrollWidth - document.documentElement.clientWidth";

    @LocalServerPort
    private int port;

    @Autowired
    private Database database;

    @Autowired
    private ApplicationContext context;

    private Plant plant;
    private Compressor compressor;

    @BeforeEach
    void startWithOneMachine() {
        database.wipe();
        plant = Plant.in(context);
        compressor = plant.compressor(plant.site());
    }

    private String baseUrl() {
        return "http://127.0.0.1:" + port;
    }

    /** Worn for four years, repaired, worn again; one test does not join, one event changed nothing. */
    private void wornRepairedAndWorn() {
        for (int i = 0; i < 16; i++) {
            double mid = 60 + 0.6 * (i % 8);
            String day = (2018 + i / 2) + (i % 2 == 0 ? "-01" : "-07") + "-05T14:00:00Z";
            plant.test(compressor, day, seconds(mid - 0.2), seconds(mid), seconds(mid + 0.3));
        }
        plant.plan(compressor).on("2020-03-05T14:00:00Z").anotherMachineOn().record();
        plant.event(compressor, LocalDate.of(2021, 10, 1), EventKind.VALVES, true, "Plates new");
        plant.event(compressor, LocalDate.of(2023, 10, 1), EventKind.FILTER, false, "");
    }

    private static String seconds(double time) {
        return String.valueOf(Math.round(10 * time) / 10.0);
    }

    @Test
    void drawsWhatTheTablesSay(Browser browser) {
        wornRepairedAndWorn();

        try (Visit visit = browser.desktop(baseUrl())) {
            Page page = visit.open("/compressors/1");

            assertThat(page.locator(".flow-chart .counted circle")).hasCount(16);
            assertThat(page.locator(".flow-chart .left-out circle")).hasCount(1);
            assertThat(page.locator(".flow-chart .band path")).hasCount(2);
            assertThat(page.locator(".flow-chart .fitted path")).hasCount(2);
            assertThat(page.locator(".flow-chart .fitted-forecast path")).hasCount(1);
            assertThat(page.locator(".flow-chart .events line")).hasCount(1);
            assertThat(page.locator(".flow-chart .events-no-step line")).hasCount(1);
            assertThat(page.locator(".flow-chart .event-names text")).hasText(new String[] {"A", "B"});
            assertThat(page.locator(".flow-chart .level-names text"))
                    .hasText(new String[] {"baseline, 100 %", "watch below, 95 %", "plan below, 90 %", "act below, 80 %"
                    });
            visit.checkAccessibility();
            visit.screenshot("compressor-chart");
        }
    }

    @Test
    void tellsAndOpensATestByMouse(Browser browser) {
        wornRepairedAndWorn();

        try (Visit visit = browser.desktop(baseUrl())) {
            Page page = visit.open("/compressors/1");
            var first = page.locator(".flow-chart .counted circle").first();
            first.hover();
            assertThat(page.locator(".flow-chart")).containsText("2018-01-05");
            first.click();
            assertThat(page).hasURL(Pattern.compile(".*/tests/1$"));
        }
    }

    @Test
    void tellsATestByTheFirstTapAndOpensItByTheSecond(Browser browser) {
        wornRepairedAndWorn();

        try (Visit visit = browser.phone(baseUrl())) {
            Page page = visit.open("/compressors/1");
            var last = page.locator(".flow-chart .counted circle").last();
            last.tap();
            assertThat(page.locator(".flow-chart")).containsText("2025-07-05");
            assertThat(page).hasURL(Pattern.compile(".*/compressors/1$"));
            last.tap();
            assertThat(page).hasURL(Pattern.compile(".*/tests/16$"));
        }
    }

    @Test
    void fitsAPhone(Browser browser) {
        wornRepairedAndWorn();

        try (Visit visit = browser.phone(baseUrl())) {
            for (String path : new String[] {"/compressors/1", "/compressors/1/baseline"}) {
                Page page = visit.open(path);
                assertThat(page.evaluate(SCROLLS_SIDEWAYS)).as(path).isEqualTo(0);
                visit.checkAccessibility();
            }
            assertThat(visit.open("/compressors/1").locator(".flow-chart .level-names text"))
                    .hasText(new String[] {"100 %", "95 %", "90 %", "80 %"});
            visit.screenshot("compressor-chart-phone");
        }
    }

    @Test
    void isAnImageWithATextForAScreenReader(Browser browser) {
        wornRepairedAndWorn();

        try (Visit visit = browser.desktop(baseUrl())) {
            var chart = visit.open("/compressors/1").locator("figure svg");

            assertThat(chart).hasAttribute("role", "img");
            assertThat(chart)
                    .hasAttribute(
                            "aria-label",
                            Pattern.compile("Chart of 17 tests from 2018-01-05 to 2025-07-05\\. Trend: .*"));
        }
    }

    @Test
    void printsChartAndTablesWithoutTheWayAround(Browser browser) {
        wornRepairedAndWorn();

        try (Visit visit = browser.desktop(baseUrl())) {
            Page page = visit.open("/compressors/1");
            assertThat(page.locator("figure svg")).isVisible();
            page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
            page.setViewportSize(688, 1000); // A4 less its margins, at 96 dots an inch

            assertThat(page.locator("figure svg")).isVisible();
            assertThat(page.locator("#flows")).isVisible();
            assertThat(page.locator("body > header nav")).isHidden();
            assertThat(page.locator(".actions").first()).isHidden();
            assertThat(page.evaluate(SCROLLS_SIDEWAYS)).isEqualTo(0);
            assertThat(page.locator("#flows").boundingBox().width).isLessThanOrEqualTo(688);
            visit.screenshot("compressor-print");
        }
    }

    @Test
    void showsFiveTests(Browser browser) {
        for (int year = 2021; year < 2026; year++) {
            plant.test(compressor, year + "-01-05T14:00:00Z", "60.2", "60.8", "60.5");
        }

        try (Visit visit = browser.desktop(baseUrl())) {
            assertThat(visit.open("/compressors/1").locator(".flow-chart .counted circle"))
                    .hasCount(5);
        }
    }

    @Test
    void staysUsableWithFiveHundredTests(Browser browser) {
        LocalDate first = LocalDate.of(2016, 1, 5);
        for (int i = 0; i < 500; i++) {
            double mid = 60 + 0.004 * i + 0.4 * (i * 7 % 5 - 2);
            plant.test(
                    compressor,
                    first.plusDays(7L * i) + "T14:00:00Z",
                    seconds(mid - 0.2),
                    seconds(mid),
                    seconds(mid + 0.3));
        }

        try (Visit visit = browser.desktop(baseUrl())) {
            visit.open("/compressors/1");
            long start = System.nanoTime();
            Page page = visit.open("/compressors/1");
            assertThat(page.locator(".flow-chart .counted circle")).hasCount(500);
            long millis = (System.nanoTime() - start) / 1_000_000;

            // an idle machine takes well under a second; the bound leaves room for a busy one
            assertThat(millis).as("milliseconds for 500 tests").isLessThan(15_000);
            assertThat(page.locator("#flows tbody tr")).hasCount(500);
            assertThat(page.locator("#tests tbody tr")).hasCount(25);
            assertThat(page.locator(".scroll.tall").boundingBox().height).isLessThan(600);
            assertThat(page.locator(".flow-chart .counted circle").first()).hasAttribute("r", "2.25");
            visit.screenshot("compressor-500");
        }
    }
}
