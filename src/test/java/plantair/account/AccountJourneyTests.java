package plantair.account;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.GetByRoleOptions;
import com.microsoft.playwright.options.AriaRole;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import plantair.testing.Browser;
import plantair.testing.Database;
import plantair.testing.NeedsBrowser;
import plantair.testing.OnH2;
import plantair.testing.Visit;

/** A new colleague: opened by the administrator, signs in with the one-time password, chooses another, leaves. */
@OnH2
@NeedsBrowser
final class AccountJourneyTests {

    private static final String CHOSEN = "seven grey herons at noon";

    @LocalServerPort
    private int port;

    @Autowired
    private Database database;

    @BeforeEach
    void emptyStart() {
        database.wipe();
    }

    @AfterEach
    void letInPeople() {
        database.letInPeople();
    }

    private String baseUrl() {
        return "http://127.0.0.1:" + port;
    }

    private static void press(Page page, String button) {
        page.locator("main")
                .getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName(button))
                .click();
    }

    private static void signIn(Page page, String password) {
        page.locator("#username").fill("eve");
        page.locator("#password").fill(password);
        press(page, "Sign in");
    }

    @Test
    void letsInANewColleague(Browser browser) {
        String oneTime;
        try (Visit ann = browser.desktop(baseUrl())) {
            Page page = ann.open("/accounts/new");
            page.locator("#username").fill("eve");
            page.locator("#displayName").fill("Eve Øst");
            page.getByLabel("Technician: tests and events").check();
            ann.checkAccessibility();
            press(page, "Save");
            oneTime = page.locator("#one-time").innerText();
            ann.checkAccessibility();
        }
        try (Visit eve = browser.stranger(baseUrl())) {
            Page page = eve.open("/tests");
            eve.checkAccessibility();
            signIn(page, "wrong");
            assertThat(page.locator("main")).containsText("Not let in");
            signIn(page, oneTime);
            assertThat(page.locator("main")).containsText("Choose a password of your own");
            eve.checkAccessibility();
            page.locator("#current").fill(oneTime);
            page.locator("#password").fill(CHOSEN);
            page.locator("#again").fill(CHOSEN);
            press(page, "Change the password");
            signIn(page, CHOSEN);
            assertThat(page.getByRole(AriaRole.LINK, new GetByRoleOptions().setName("Eve Øst")))
                    .isVisible();
            assertThat(page.getByRole(AriaRole.LINK, new GetByRoleOptions().setName("Accounts")))
                    .hasCount(0);
            page.getByRole(AriaRole.BUTTON, new GetByRoleOptions().setName("Sign out"))
                    .click();
            assertThat(page).hasURL(Pattern.compile(".*/login\\?left"));
        }
    }

    @Test
    void fitsAPhone(Browser browser) {
        try (Visit visit = browser.phone(baseUrl())) {
            for (String path : new String[] {
                "/accounts", "/accounts/new", "/accounts/2/edit", "/accounts/sign-ins", "/account", "/login"
            }) {
                Page page = visit.open(path);
                Object overflow =
                        page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
                assertThat(overflow).as("sideways scroll of " + path).isEqualTo(0);
                assertThat(page.locator("h1")).not().isEmpty();
                visit.checkAccessibility();
                visit.screenshot("phone" + path.replace('/', '-'));
            }
        }
    }
}
