package plantair.stories;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static plantair.testing.PlantForms.COMPRESSOR;
import static plantair.testing.PlantForms.RECEIVER;
import static plantair.testing.PlantForms.SITE;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.testing.Browser;
import plantair.testing.Database;
import plantair.testing.LeakForms;
import plantair.testing.NeedsBrowser;
import plantair.testing.OnH2;
import plantair.testing.SentForm;
import plantair.testing.Visit;

/** The night of leaks on the phone of the technician, and a leak that is found, repaired and looked at again. */
@OnH2
@NeedsBrowser
final class LeakNightJourneyTests {

    @LocalServerPort
    private int port;

    @Autowired
    private Database database;

    @Autowired
    private MockMvcTester site;

    @BeforeEach
    void plant() {
        database.wipe();
        for (SentForm form : new SentForm[] {SITE, COMPRESSOR, RECEIVER}) {
            assertThat(form.post(site).status()).isEqualTo(302);
        }
    }

    private String baseUrl() {
        return "http://127.0.0.1:" + port;
    }

    private static void press(Page page, String name) {
        page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName(name).setExact(true))
                .click();
    }

    private static void choose(Page page, AriaRole role, String name) {
        page.getByRole(role, new GetByRoleOptions().setName(name)).first().click();
    }

    private static void looksWell(Visit visit) {
        visit.checkAccessibility();
        assertThat(visit.page().evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                .as("runs over the width of a phone: " + visit.page().url())
                .isEqualTo(0);
    }

    private static void cycles(Page page, String loaded, String unloaded, String standing) {
        for (int i = 0; i < 5; i++) {
            page.locator("[name='cycles[" + i + "].loaded.number']").fill(loaded);
            page.locator("[name='cycles[" + i + "].unloaded.number']").fill(unloaded);
            page.locator("[name='cycles[" + i + "].standing.number']").fill(standing);
        }
    }

    private static Locator main(Page page) {
        return page.locator("main");
    }

    @Test
    void timesALeakNightBeforeAndAfterRepairs(Browser browser) {
        try (Visit visit = browser.phone(baseUrl())) {
            Page page = visit.open("/sites/1/leak-tests");
            looksWell(visit);
            choose(page, AriaRole.BUTTON, "By load times");
            looksWell(visit);
            page.getByLabel("All users of air are off").check();
            page.getByLabel("Timed drains and the purge of dryers are off").check();
            page.locator("[name='atPressure.number']").fill("100");
            page.getByLabel("It ran and fed the system").check();
            page.locator("[name='machines[0].capacity.number']").fill("210");
            page.locator("[name='machines[0].capacityAt.number']").fill("100");
            cycles(page, "90", "110", "5:00");
            press(page, "Save");

            assertThat(page.locator("[id='machines0.percent-error']")).containsText("Type the number");
            looksWell(visit);
            page.locator("[name='machines[0].percent.number']").fill("6");
            press(page, "Save");

            assertThat(page.locator(".result")).containsText("18.0");
            assertThat(page.locator(".result")).containsText("37.8");
            assertThat(main(page)).containsText("Standing still is not loading");
            looksWell(visit);
            visit.screenshot("leak-night");

            visit.open("/sites/1/leak-tests/new?kind=LOAD_TIMES");
            page.getByLabel("All users of air are off").check();
            page.locator("[name='atPressure.number']").fill("100");
            page.getByLabel("It ran and fed the system").check();
            page.locator("[name='machines[0].capacity.number']").fill("210");
            page.locator("[name='machines[0].capacityAt.number']").fill("100");
            page.locator("[name='machines[0].percent.number']").fill("6");
            cycles(page, "45", "655", "");
            press(page, "Save");
            assertThat(page.locator(".result")).containsText("6.4");
            assertThat(page.locator(".result")).containsText("13.5");
            assertThat(page.locator(".result")).containsText("well kept");

            visit.open("/sites/1/leak-tests");
            assertThat(page.locator("tbody tr")).hasCount(2);
            looksWell(visit);
        }
    }

    @Test
    void followsALeakUntilItIsTight(Browser browser) {
        try (Visit visit = browser.phone(baseUrl())) {
            Page page = visit.open("/sites/1/leaks");
            looksWell(visit);
            choose(page, AriaRole.BUTTON, "Record a leak");
            looksWell(visit);
            page.getByLabel("Tag").fill("L-7");
            page.getByLabel("Place").fill("Bay 3, behind the saw");
            page.getByLabel("Component").selectOption("HOSE");
            page.getByLabel("Priority").selectOption("HIGH");
            page.getByLabel("judged by ear").check();
            page.locator("[name='flow.number']").fill("3");
            press(page, "Save");
            assertThat(main(page)).containsText("3.0 ± 2.1 cfm");
            assertThat(main(page)).containsText("lock it out, bleed it to zero");
            looksWell(visit);

            page.getByLabel("repaired").check();
            press(page, "Save");
            assertThat(page.locator("main .status").first()).containsText("repaired");
            page.getByLabel("looked again: tight").check();
            press(page, "Save");
            assertThat(page.locator("main .status").first()).containsText("verified");
            visit.screenshot("leak-verified");
            looksWell(visit);

            visit.open("/sites/1/leaks?standing=VERIFIED");
            assertThat(page.locator("tbody tr")).hasCount(1);
            assertThat(main(page)).containsText("No leak is open");
            looksWell(visit);
        }
    }

    @Test
    void readsAFallOnThePhone(Browser browser) {
        assertThat(LeakForms.pastedFall("0 8.02\n60 7.92\n120 7.83\n180 7.74\n240 7.67")
                        .post(site)
                        .status())
                .isEqualTo(302);
        try (Visit visit = browser.phone(baseUrl())) {
            for (String path : new String[] {
                "/leak-tests/1",
                "/leak-tests/1/correct",
                "/sites/1/leak-tests/new?kind=TWO_READINGS",
                "/sites/1/leak-tests/new?kind=FALL"
            }) {
                visit.open(path);
                looksWell(visit);
            }
        }
    }
}
