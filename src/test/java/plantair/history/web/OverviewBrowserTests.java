package plantair.history.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
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

/** The manager's pages on a phone. */
@OnH2
@NeedsBrowser
final class OverviewBrowserTests {

    @LocalServerPort
    private int port;

    @Autowired
    private Database database;

    @Autowired
    private ApplicationContext context;

    @BeforeEach
    void someMachines() {
        database.wipe();
        Plant plant = Plant.in(context);
        var site = plant.site();
        var worn = plant.compressor(site, "WORN");
        plant.test(worn, "2025-06-05T14:00:00Z", "60.2", "60.8", "60.5");
        plant.test(worn, "2025-12-05T14:00:00Z", "66.2", "66.8", "66.5");
        plant.test(worn, "2026-06-05T14:00:00Z", "66.2", "66.8", "66.5");
        var hazard = plant.compressor(site, "HAZARD");
        plant.plan(hazard).band("168.0 [psi]", "205.0 [psi]").record();
        var leaky = plant.compressor(site, "LEAKY");
        plant.test(leaky, "2025-06-05T14:00:00Z", "60.2", "60.8", "60.5");
        plant.plan(leaky).held("172.0 [psi]", "165.0 [psi]").record();
        plant.compressor(site, "NEVER");
    }

    @Test
    void fitsAPhoneAndBarsNobody(Browser browser) {
        try (Visit visit = browser.phone("http://127.0.0.1:" + port)) {
            for (String path : new String[] {"/", "/sites/1/limits", "/compressors/1", "/tests/3"}) {
                Page page = visit.open(path);
                Object overflow =
                        page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
                assertThat(overflow).as("sideways scroll of " + path).isEqualTo(0);
                visit.checkAccessibility();
                visit.screenshot("manager" + path.replace('/', '-'));
            }
        }
    }

    @Test
    void showsOneStateAloneAndLeadsToTheMachine(Browser browser) {
        try (Visit visit = browser.phone("http://127.0.0.1:" + port)) {
            Page page = visit.open("/");
            assertThat(page.locator("#machines tbody tr")).hasCount(4);
            assertThat(page.locator("#machines tbody th").first()).containsText("HAZARD");
            assertThat(page.locator("#machines svg").first()).isVisible();

            page.locator("details > summary").click();
            page.locator("#standing").selectOption("WATCH");
            page.locator("details form button[type=submit]").click();
            assertThat(page.locator("#machines tbody tr")).hasCount(1);

            page.locator("#machines tbody th a").click();
            assertThat(page.locator("#checks li").first()).containsText("Drain the receiver");
        }
    }
}
