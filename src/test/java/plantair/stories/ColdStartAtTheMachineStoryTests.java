package plantair.stories;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static plantair.testing.PlantForms.COMPRESSOR;
import static plantair.testing.PlantForms.RECEIVER;
import static plantair.testing.PlantForms.SITE;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.Cookie;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import plantair.testing.Browser;
import plantair.testing.NeedsBrowser;
import plantair.testing.OnH2;
import plantair.testing.Visit;
import plantair.web.UnitSet;

/** A plant that reads bar and litres tests a machine that is still cold, with the phone beside it. */
@OnH2
@NeedsBrowser
final class ColdStartAtTheMachineStoryTests extends Story {

    @LocalServerPort
    private int port;

    @BeforeAll
    static void bePatient() {
        PlaywrightAssertions.setDefaultAssertionTimeout(40_000);
    }

    private static void fill(Page page, String id, String text) {
        page.locator("[id='" + id + "']").fill(text);
    }

    private static void next(Page page) {
        page.locator(".step.here [data-move=next]").click();
    }

    private static void tick(Page page, String name) {
        page.locator("[name='" + name + "']").all().forEach(box -> box.check());
    }

    private static void run(Page page, int run, String seconds) {
        fill(page, "runs" + run + ".startPressure.number", "7.0");
        fill(page, "runs" + run + ".stopPressure.number", "8.5");
        fill(page, "runs" + run + ".startAir.number", "35");
        fill(page, "runs" + run + ".stopAir.number", "35");
        fill(page, "runs" + run + ".elapsed.number", seconds);
    }

    /** 500 L × 1.5 / 0.985 / t × 295.15 / 308.15 = 15.2, 14.3, 13.5 L/s, and 13.0 once it is warm. */
    @Test
    void tellsTheTesterToWaitWhileTheValveIsStillShut(Browser browser) {
        register(
                SITE.with("elevation", "200", "m").with("zone", "Europe/Oslo"),
                COMPRESSOR.with("ratings[0].pressure", "8.5", "bar").with("ratings[0].flow", "13.5", "L/s"),
                RECEIVER.with("volume", "500", "L").with("mawp", "11", "bar").with("reliefSet", "11", "bar"));
        String baseUrl = "http://127.0.0.1:" + port;
        try (Visit visit = browser.phone(baseUrl)) {
            visit.page()
                    .context()
                    .addCookies(List.of(new Cookie(UnitSet.COOKIE, UnitSet.BAR_LITRE.name()).setUrl(baseUrl)));
            Page page = visit.open("/guided?tag=C-1");
            fill(page, "tagRead", "C-1");
            page.getByLabel("R-1, 500 L").check();
            tick(page, "prepared");
            next(page);
            next(page);
            tick(page, "isolated");
            next(page);
            fill(page, "intakeTemperature.number", "22");
            fill(page, "intakeHumidity.number", "0");
            fill(page, "barometer.number", "985");
            next(page);
            List.of("48", "51", "54")
                    .forEach(seconds -> run(page, List.of("48", "51", "54").indexOf(seconds), seconds));
            next(page);
            next(page);
            next(page);

            assertThat(page.locator("#result-answer .run-flows"))
                    .containsText(Pattern.compile("15\\.\\d.*14\\.\\d.*13\\.\\d", Pattern.DOTALL));
            assertThat(page.locator("#result-answer")).containsText("still warming");
            assertThat(page.locator("#result-answer .flow")).hasText("–");
            assertThat(page.locator("#guide-state")).not().containsText("changed elsewhere");
            visit.checkAccessibility();
            visit.screenshot("guided-cold");

            page.locator("#steps [data-go=runs]").click();
            List.of("56.0", "56.4", "56.2")
                    .forEach(
                            seconds -> run(page, List.of("56.0", "56.4", "56.2").indexOf(seconds), seconds));
            page.locator("#steps [data-go=result]").click();
            assertThat(page.locator("#result-answer .flow")).containsText(Pattern.compile("13\\.\\d.* L/s"));
            next(page);
            tick(page, "putBack");
            page.locator("#finish").click();

            assertThat(page).hasURL(Pattern.compile(".*/tests/1$"));
            assertThat(page.locator(".result")).containsText(Pattern.compile("13\\.[01].* L/s"));
            assertThat(page.locator(".result")).containsText("0.7 %");
        }
    }
}
