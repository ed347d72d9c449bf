package plantair.runlog.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static plantair.testing.PlantForms.COMPRESSOR;
import static plantair.testing.PlantForms.GAUGE;
import static plantair.testing.PlantForms.PIPE;
import static plantair.testing.PlantForms.RECEIVER;
import static plantair.testing.PlantForms.SITE;
import static plantair.testing.PlantForms.pumpUp;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.testing.Browser;
import plantair.testing.Database;
import plantair.testing.NeedsBrowser;
import plantair.testing.OnH2;
import plantair.testing.SentForm;
import plantair.testing.SentLog;
import plantair.testing.Visit;

/** A file of a logger on a phone: sent, its columns chosen, the flow at the pressure of the rating read. */
@OnH2
@NeedsBrowser
final class LoggedRunJourneyTests {

    @LocalServerPort
    private int port;

    @Autowired
    private Database database;

    @Autowired
    private MockMvcTester site;

    @BeforeEach
    void plant() {
        database.wipe();
        List.of(SITE, COMPRESSOR, RECEIVER, PIPE, GAUGE, pumpUp("2026-05-12", "62.2", "62.8", "62.5"))
                .forEach((SentForm form) ->
                        assertThat(form.post(site).status()).as(form.address()).isEqualTo(302));
    }

    @Test
    void readsTheFlowAtThePressureOfTheRating(Browser browser) {
        try (Visit visit = browser.phone("http://127.0.0.1:" + port)) {
            Page page = visit.open("/tests/1");
            page.getByRole(AriaRole.LINK, named("Add the file of a logger")).click();
            visit.checkAccessibility();
            page.getByLabel("File of the logger")
                    .setInputFiles(new FilePayload(
                            "fill.csv", "text/csv", (SentLog.rise() + "stop\n").getBytes(StandardCharsets.UTF_8)));
            page.getByRole(AriaRole.BUTTON, named("Go on to the columns")).click();

            assertThat(page.getByLabel("Column of the pressure")).hasValue("2");
            assertThat(page.locator("#faults")).containsText("Line 153: fewer columns than chosen");
            visit.checkAccessibility();
            page.getByRole(AriaRole.BUTTON, named("Record it")).click();
            assertThat(page.locator("#errors")).containsText("cannot be read");
            page.getByLabel("Leave out lines that cannot be read").check();
            page.getByRole(AriaRole.BUTTON, named("Record it")).click();

            assertThat(page.locator("h1")).containsText("Flow against pressure");
            assertThat(page.locator("main")).containsText("At 175.0 psig, where the maker rates it");
            assertThat(page.locator("main")).containsText("carried from 156.0 psig by the shape of Log 1");
            assertThat(page.locator("svg.curve-chart")).isVisible();
            assertThat(page.locator("svg.curve-chart .rating path")).hasCount(1);
            visit.checkAccessibility();
            page.getByLabel("Flow at", new Page.GetByLabelOptions().setExact(true))
                    .fill("120");
            page.getByRole(AriaRole.BUTTON, named("Show the flow there")).click();
            assertThat(page.locator("main")).containsText("At 120.0 psig, as asked");
            assertThat(page.evaluate("document.documentElement.scrollWidth <= document.documentElement.clientWidth"))
                    .isEqualTo(true);
        }
    }

    private static GetByRoleOptions named(String name) {
        return new GetByRoleOptions().setName(name);
    }
}
