package plantair;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.nio.file.Files;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import plantair.testing.Browser;
import plantair.testing.Database;
import plantair.testing.NeedsBrowser;
import plantair.testing.OnH2;
import plantair.testing.Plant;
import plantair.testing.Visit;

/** What a person does from an empty start, in a real browser: record, see, correct, follow, export. */
@OnH2
@NeedsBrowser
final class JourneyTests {

    @LocalServerPort
    private int port;

    @Autowired
    private Database database;

    @Autowired
    private ApplicationContext context;

    @BeforeEach
    void emptyStart() {
        database.wipe();
    }

    private String baseUrl() {
        return "http://127.0.0.1:" + port;
    }

    private static void click(Page page, AriaRole role, String name) {
        page.getByRole(role, new GetByRoleOptions().setName(name)).first().click();
    }

    private static void fill(Page page, String id, String text) {
        page.locator("[id='" + id + "']").fill(text);
    }

    private static void choose(Page page, String id, String value) {
        page.locator("[id='" + id + "']").selectOption(value);
    }

    private static void see(Page page, String text) {
        assertThat(page.locator("main")).containsText(text);
    }

    @Test
    void leadsFromAnEmptyStartToACsvFile(Browser browser) throws IOException {
        try (Visit visit = browser.desktop(baseUrl())) {
            Page page = visit.open("/");
            visit.checkAccessibility();
            registerAPlant(visit, page);
            recordATest(visit, page);
            correctIt(visit, page);
            followIt(visit, page);
            export(visit, page);
        }
    }

    private static void registerAPlant(Visit visit, Page page) {
        visit.open("/sites/new");
        fill(page, "name", "Åsen works");
        choose(page, "zone", "Europe/Oslo");
        fill(page, "elevation.number", "120");
        choose(page, "elevation.unit", "m");
        visit.checkAccessibility();
        page.locator("main form button[type=submit]").last().click();
        see(page, "Åsen works");
        visit.checkAccessibility();

        visit.open("/compressors/new?site=1");
        fill(page, "tag", "K-1");
        choose(page, "kind", "PISTON");
        fill(page, "stages", "2");
        choose(page, "drive", "BELT");
        choose(page, "control", "START_STOP");
        fill(page, "ratings0.pressure.number", "175");
        fill(page, "ratings0.flow.number", "35");
        choose(page, "ratings0.basis", "INTAKE");
        visit.checkAccessibility();
        page.locator("main form button[type=submit]").last().click();
        see(page, "K-1");

        visit.open("/receivers/new?site=1");
        fill(page, "tag", "R-1");
        fill(page, "volume.number", "120");
        choose(page, "volumeKnownBy", "PLATE");
        fill(page, "mawp.number", "200");
        fill(page, "reliefSet.number", "190");
        visit.checkAccessibility();
        page.locator("main form button[type=submit]").last().click();
        see(page, "R-1");
    }

    private static void recordATest(Visit visit, Page page) {
        visit.open("/tests/new");
        click(page, AriaRole.LINK, "K-1");
        visit.checkAccessibility();
        fill(page, "date", "2026-05-12");
        fill(page, "time", "14:05");
        fill(page, "tester", "Ilse Øberg");
        page.getByLabel("R-1, 120 US gal").check();
        fill(page, "barometer.number", "29.4");
        fill(page, "intakeTemperature.number", "75");
        String[] seconds = {"1:02.2", "62.8", "6 5"};
        for (int run = 0; run < seconds.length; run++) {
            fill(page, "runs" + run + ".startPressure.number", "140.0");
            fill(page, "runs" + run + ".stopPressure.number", "172.0");
            fill(page, "runs" + run + ".elapsed.number", seconds[run]);
            fill(page, "runs" + run + ".startAir.number", "94");
            fill(page, "runs" + run + ".stopAir.number", "96");
        }
        click(page, AriaRole.BUTTON, "Save the test");
        see(page, "“6 5” has a blank inside");
        assertThat(page.locator("[id='runs0.elapsed.number']")).hasValue("1:02.2");
        visit.checkAccessibility();
        visit.screenshot("test-refused");
        fill(page, "runs2.elapsed.number", "62.5");
        click(page, AriaRole.BUTTON, "Save the test");
        see(page, "Free air delivered");
        see(page, "1:02.2 (m:ss)");
        visit.checkAccessibility();
        visit.screenshot("test-result");
    }

    private static void correctIt(Visit visit, Page page) {
        click(page, AriaRole.LINK, "Correct this test");
        fill(page, "reason", "=Misread the watch in run 2");
        fill(page, "runs1.elapsed.number", "62.3");
        visit.checkAccessibility();
        click(page, AriaRole.BUTTON, "Save the correction");
        see(page, "takes the place of test 1");
        click(page, AriaRole.LINK, "Show test 1");
        see(page, "62.8 s");
        see(page, "This test is superseded");
    }

    private static void followIt(Visit visit, Page page) {
        visit.open("/");
        see(page, "K-1");
        visit.checkAccessibility();
        click(page, AriaRole.LINK, "K-1");
        assertThat(page.locator("svg")).isVisible();
        Locator row = page.locator("table[data-chart] tbody tr");
        assertThat(row).hasCount(1);
        visit.checkAccessibility();
        visit.screenshot("compressor");
    }

    private static void export(Visit visit, Page page) throws IOException {
        visit.open("/export");
        visit.checkAccessibility();
        Download download = page.waitForDownload(() ->
                page.locator("main form button[type=submit]:not([formaction])").click());
        String csv = Files.readString(download.path());
        assertThat(csv.lines().count()).isEqualTo(1 + 6);
        assertThat(csv).contains("1:02.2", "m:ss", "Ann (ann)", "'=Misread the watch");
    }

    @Test
    void showsAResultOnAPhoneWithoutScript(Browser browser) {
        Plant plant = Plant.in(context);
        var compressor = plant.compressor(plant.site());
        plant.test(compressor, "2026-01-05T14:00:00Z", "60.2", "60.8", "60.5");

        try (Visit visit = browser.withoutScript(baseUrl())) {
            Page page = visit.open("/tests/1");
            see(page, "Free air delivered");
            visit.open("/compressors/" + compressor.id());
            assertThat(page.locator("table[data-chart] tbody tr")).hasCount(1);
        }
    }

    @Test
    void drawsTheChartFromTheTableAndOpensATestByClick(Browser browser) {
        Plant plant = Plant.in(context);
        var compressor = plant.compressor(plant.site());
        plant.test(compressor, "2025-07-05T14:00:00Z", "60.2", "60.8", "60.5");
        plant.test(compressor, "2025-10-05T14:00:00Z", "61.2", "61.8", "61.5");
        plant.test(compressor, "2026-01-05T14:00:00Z", "62.2", "62.8", "62.5");

        try (Visit visit = browser.desktop(baseUrl())) {
            Page page = visit.open("/compressors/" + compressor.id());
            assertThat(page.locator("svg circle")).hasCount(3);
            page.locator("svg circle").first().click();
            assertThat(page).hasURL(Pattern.compile(".*/tests/[123]"));
        }
    }

    @Test
    void fitsAPhone(Browser browser) {
        Plant plant = Plant.in(context);
        var site = plant.site();
        var compressor = plant.compressor(site);
        plant.receiver(site);
        plant.test(compressor, "2026-01-05T14:00:00Z", "60.2", "60.8", "60.5");

        try (Visit visit = browser.phone(baseUrl())) {
            for (String path : new String[] {
                "/",
                "/tests",
                "/tests/1",
                "/tests/1/supersede",
                "/compressors/1",
                "/compressors/1/tests/new",
                "/receivers",
                "/receivers/1",
                "/sites",
                "/sites/1",
                "/export",
                "/changes",
                "/audit",
                "/tests/1/review"
            }) {
                Page page = visit.open(path);
                Object overflow =
                        page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
                assertThat(overflow).as("sideways scroll of " + path).isEqualTo(0);
                visit.checkAccessibility();
                visit.screenshot("phone" + path.replace('/', '-'));
            }
        }
    }
}
