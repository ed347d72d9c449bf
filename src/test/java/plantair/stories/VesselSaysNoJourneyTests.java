package plantair.stories;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static plantair.testing.PlantForms.COMPRESSOR;
import static plantair.testing.PlantForms.RECEIVER;
import static plantair.testing.PlantForms.SITE;
import static plantair.testing.PlantForms.pumpUp;
import static plantair.testing.VesselForms.CERTIFICATE;
import static plantair.testing.VesselForms.VALVE;
import static plantair.testing.VesselForms.interval;
import static plantair.testing.VesselForms.thickness;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.testing.Browser;
import plantair.testing.Database;
import plantair.testing.NeedsBrowser;
import plantair.testing.OnH2;
import plantair.testing.SentForm;
import plantair.testing.Visit;

/** The story of the vessel that says no, on a phone beside it; and the pages around it, for everybody. */
@OnH2
@NeedsBrowser
final class VesselSaysNoJourneyTests {

    @LocalServerPort
    private int port;

    @Autowired
    private Database database;

    @Autowired
    private MockMvcTester site;

    @BeforeEach
    void plant() {
        database.wipe();
        send(SITE);
        send(COMPRESSOR);
        send(RECEIVER.with("volume", "200", "[gal_us]")
                .with("reliefSet", "", "[psi]")
                .with("certificateRequired", "YES")
                .with("shellRequired", "0.215", "[in_i]")
                .with("headRequired", "", "[in_i]"));
        confirmed(VALVE.with("setPressure", "250", "[psi]"));
        confirmed(CERTIFICATE.with("issuedOn", "2021-05-25").with("validTo", "2026-05-25"));
        send(interval("VALVE_TEST", "12", "our insurer, letter of 2024"));
        send(thickness("2022-06-15", "0.240"));
        send(thickness("2026-06-15", "0.232"));
    }

    private void send(SentForm form) {
        var answer = form.post(site);
        assertThat(answer.status()).as(answer.text()).isEqualTo(302);
    }

    private void confirmed(SentForm form) {
        send(form.with("confirmed", form.post(site).token()));
    }

    private String baseUrl() {
        return "http://127.0.0.1:" + port;
    }

    @Test
    void stopsAtTheVesselBeforeAnyTiming(Browser browser) {
        try (Visit visit = browser.phone(baseUrl())) {
            Page page = visit.open("/guided/1");
            page.locator("#tagRead").fill("C-1");
            page.getByLabel("R-1, 200 US gal").check();

            assertThat(page.locator(".stop[data-receiver]").first())
                    .containsText("set at 250 psi, above the MAWP of 200 psi");
            assertThat(page.locator(".stop[data-receiver]").last())
                    .containsText("Certificate P-1207 ran out on 2026-05-25");
            page.locator("[data-step='prepare']")
                    .getByRole(AriaRole.BUTTON, nextStep())
                    .click();
            assertThat(page.locator("[data-step='prepare'] .step-say")).containsText("must not be pumped up");
            assertThat(page.locator("[data-step='drain']")).isHidden();
            visit.screenshot("vessel-says-no");

            visit.open("/receivers/1");
            assertThat(page.locator("main")).containsText("Stop: do not test with this receiver");
            assertThat(page.locator("main")).containsText("8.5");
            assertThat(page.locator("main")).containsText("For the inspector to decide");
            visit.checkAccessibility();
            visit.screenshot("vessel-says-no-receiver");

            visit.open("/");
            assertThat(page.locator("main")).containsText("overdue");
        }
    }

    private static com.microsoft.playwright.Locator.GetByRoleOptions nextStep() {
        return new com.microsoft.playwright.Locator.GetByRoleOptions().setName("Next");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/due",
                "/sites/1/intervals",
                "/sites/1/intervals/TEST",
                "/account/calendar",
                "/receivers/1/valves/new",
                "/valves/1/tests/new",
                "/receivers/1/certificates/new",
                "/receivers/1/inspections/new",
                "/receivers/1/findings/new",
                "/attachments/of/RECEIVER/1",
                "/compressors/1/sheet",
                "/compressors/1/label",
                "/sites/1/labels",
                "/tests/1/report",
                "/guided"
            })
    void barsNobody(String path, Browser browser) {
        confirmed(pumpUp("2026-05-12", "62.2", "62.8", "62.5")
                .with("pipes", "")
                .with("submission", UUID.randomUUID().toString()));
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
