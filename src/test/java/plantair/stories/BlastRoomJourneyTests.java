package plantair.stories;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.testing.Browser;
import plantair.testing.Database;
import plantair.testing.DemandForms;
import plantair.testing.NeedsBrowser;
import plantair.testing.OnH2;
import plantair.testing.SentForm;
import plantair.testing.Visit;

/** The story of the blast room on a phone, from the first nozzle to the answer; and its pages, for everybody. */
@OnH2
@NeedsBrowser
final class BlastRoomJourneyTests {

    @LocalServerPort
    private int port;

    @Autowired
    private Database database;

    @Autowired
    private MockMvcTester site;

    @BeforeEach
    void plant() {
        database.wipe();
        BlastRoom.forms().forEach(this::send);
    }

    private void send(SentForm form) {
        var answer = form.post(site);
        assertThat(answer.status()).as(answer.text()).isEqualTo(302);
    }

    private String baseUrl() {
        return "http://127.0.0.1:" + port;
    }

    private static void press(Page page, String name) {
        page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName(name)).click();
    }

    @Test
    void asksForANozzleAndTellsWhetherThereIsAirForIt(Browser browser) {
        try (Visit visit = browser.phone(baseUrl())) {
            Page page = visit.open("/supply");
            assertThat(page.locator("#sentence")).containsText("Nothing that takes air is on record");
            page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName("Add what takes air"))
                    .click();
            page.getByLabel("What and where").fill("Blast room");
            page.locator("#kind").selectOption("BLAST_NOZZLE");
            assertThat(page.locator("[id='air.flow.number']")).isHidden();
            page.locator("[id='air.nozzle']").selectOption("NO_5");
            page.locator("[id='air.pressure.number']").fill("100");
            press(page, "Save");

            assertThat(page.locator(".lead")).containsText("not enough");
            assertThat(page.locator("tr[data-question='bare']")).containsText("cannot be told");
            assertThat(page.locator(".supply-chart")).isVisible();
            visit.checkAccessibility();
            visit.screenshot("blast-room-wide");

            page.locator("#demand").getByText("Blast room").click();
            page.locator("[id='air.nozzle']").selectOption("NO_4");
            page.locator("[id='edit.reason']").fill("smaller nozzle bought");
            press(page, "Save");

            assertThat(page.locator(".lead")).containsText("enough");
            assertThat(page.locator("tr[data-question='reserve']")).containsText("● enough");
            assertThat(page.locator("tr[data-question='worn']")).containsText("not enough");
            assertThat(page.locator("#notes")).containsText("Without A only 50");

            page.getByLabel("A", new Page.GetByLabelOptions().setExact(true)).check();
            press(page, "Show the answer");
            assertThat(page.locator(".notice")).containsText("This is supposed");
            assertThat(page.locator(".lead")).containsText("not enough");
            visit.screenshot("blast-room-supposed");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/sites/1/supply",
                "/sites/1/supply/choices",
                "/sites/1/demand",
                "/sites/1/demand/new",
                "/demand/1/edit",
                "/sites/1/supply?kind=OPEN_NOZZLE&pieces=x"
            })
    void barsNobody(String path, Browser browser) {
        send(DemandForms.NOZZLE);
        send(DemandForms.WRENCHES);
        send(DemandForms.FLUSH);
        try (Visit visit = browser.phone(baseUrl())) {
            Page page = visit.open(path);

            assertThat(page.getByRole(AriaRole.HEADING, new GetByRoleOptions().setLevel(1)))
                    .isVisible();
            visit.checkAccessibility();
            assertThat(page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                    .as("runs over the width of a phone")
                    .isEqualTo(0);
        }
    }
}
