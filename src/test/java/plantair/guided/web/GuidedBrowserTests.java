package plantair.guided.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static plantair.testing.PlantForms.COMPRESSOR;
import static plantair.testing.PlantForms.GAUGE;
import static plantair.testing.PlantForms.PIPE;
import static plantair.testing.PlantForms.RECEIVER;
import static plantair.testing.PlantForms.SITE;

import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
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
import plantair.testing.Signal;
import plantair.testing.Visit;

/** The guided test in a real browser: its steps, its stop watch, its looks. */
@OnH2
@NeedsBrowser
final class GuidedBrowserTests {

    /** What the clock of a run may be off, in seconds. */
    private static final double TRUE_TIME = 0.1;

    @LocalServerPort
    private int port;

    @Autowired
    private Database database;

    @Autowired
    private MockMvcTester site;

    @BeforeAll
    static void bePatient() {
        PlaywrightAssertions.setDefaultAssertionTimeout(40_000);
    }

    /** A copy of the page that was just closed may be under way to the server still. */
    @BeforeEach
    void aPlant() throws InterruptedException {
        Thread.sleep(300);
        database.wipe();
        for (SentForm form : List.of(SITE, COMPRESSOR, RECEIVER, PIPE)) {
            assertThat(form.post(site).status()).isEqualTo(302);
        }
    }

    private String baseUrl() {
        return "http://127.0.0.1:" + port;
    }

    @Test
    void leadsThroughEveryStepWithoutABarrier(Browser browser) {
        try (Visit visit = browser.phone(baseUrl())) {
            Page page = visit.open("/guided/1");
            Guide guide = new Guide(page);
            List<Runnable> steps = List.of(
                    guide::prepare,
                    guide::drain,
                    guide::hold,
                    guide::air,
                    guide::runs,
                    guide::settle,
                    guide::machine,
                    guide::result,
                    guide::back);

            for (int i = 0; i < steps.size(); i++) {
                guide.isAt(Guide.STEPS.get(i));
                if (Guide.STEPS.get(i).equals("result")) {
                    assertThat(page.locator("#result-answer .flow")).containsText("cfm");
                }
                visit.checkAccessibility();
                visit.screenshot("guided-" + (i + 1) + "-" + Guide.STEPS.get(i));
                steps.get(i).run();
            }
            visit.screenshot("guided-end");
            guide.finish();

            assertThat(page).hasURL(Pattern.compile(".*/tests/1$"));
            assertThat(page.locator("#guide-log")).containsText("ticked: VESSEL_SOUND");
            assertThat(page.locator("#guide-log")).containsText("step drain");
            visit.checkAccessibility();
        }
    }

    @Test
    void isReadableInTheDark(Browser browser) {
        try (Visit visit = browser.phone(baseUrl())) {
            visit.page().emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
            Page page = visit.open("/guided/1");
            Guide guide = new Guide(page);

            visit.checkAccessibility();
            visit.screenshot("guided-dark-prepare");
            guide.prepare();
            guide.drain();
            guide.hold();
            guide.air();
            visit.checkAccessibility();
            visit.screenshot("guided-dark-runs");
            visit.open("/guided");
            visit.checkAccessibility();
            visit.screenshot("guided-dark-start");
        }
    }

    /** With more machines than the list shows at once, those whose pages are kept for no signal are on it all the same. */
    @Test
    void listsEveryMachineThatIsKeptOnTheDevice(Browser browser) {
        for (int i = 2; i <= 51; i++) {
            assertThat(COMPRESSOR.with("tag", "M-" + i).post(site).status()).isEqualTo(302);
        }
        assertThat(COMPRESSOR.with("tag", "Z-1").post(site).redirect()).startsWith("/compressors/52");
        try (Signal signal = Signal.to(baseUrl());
                Visit visit = browser.phone(signal.baseUrl())) {
            Page page = visit.open("/guided");
            Locator last = page.locator("#machines > li[data-page='/guided/52']");
            assertThat(last).hasCount(0);
            assertThat(page.locator("#machines > li")).hasCount(50);

            Guide.awaitKept(page, "/guided");
            visit.open("/guided/52");
            Guide.awaitKept(page, "/guided/52");
            visit.open("/guided");

            Locator first = page.locator("#machines > li").first();
            assertThat(first).containsText("Z-1, ");
            assertThat(first).containsText("Kept");
            assertThat(page.locator("#machines > li")).hasCount(51);
            visit.checkAccessibility();
            visit.screenshot("guided-many");

            signal.cut();
            page.context().setOffline(true);
            page.reload();
            assertThat(first).containsText("Z-1, ");
            first.locator("a").click();
            assertThat(page).hasURL(Pattern.compile(".*/guided/52$"));
            assertThat(page.locator("h1")).containsText("Z-1");
            visit.takeFaults();
        }
    }

    @Test
    void keepsAGaugeThatWasBorrowedFromAnotherSite(Browser browser) {
        SITE.with("name", "South works").post(site);
        GAUGE.with("tag", "G-THERE").with("site", "2").post(site);
        try (Visit visit = browser.phone(baseUrl())) {
            Page page = visit.open("/guided/1");
            Locator gauge = page.locator("#gauge");
            assertThat(gauge.locator("option")).hasCount(1);

            page.getByText("Offer instruments of every site").click();
            gauge.selectOption("G-THERE");
            page.waitForTimeout(300);
            visit.checkAccessibility();
            visit.open("/guided/1");

            assertThat(gauge).hasValue("1");
            assertThat(gauge.locator("option:checked")).hasText("chosen before, not in this list");
        }
    }

    @Test
    void hasNothingSmallerThanAGlovedFinger(Browser browser) {
        try (Visit visit = browser.phone(baseUrl())) {
            Page page = visit.open("/guided/1");

            for (String step : Guide.STEPS) {
                page.evaluate(
                        "name => document.querySelectorAll('.step').forEach(step =>"
                                + " step.classList.toggle('here', step.dataset.step === name))",
                        step);
                for (Locator control : page.locator(".step.here button:visible, .step.here select:visible,"
                                + " .step.here input[type=text]:visible, .step.here label:has(> input):visible")
                        .all()) {
                    BoundingBox box = control.boundingBox();
                    assertThat(box.height).as(step + " " + control).isGreaterThanOrEqualTo(55.9);
                }
            }
        }
    }

    @Test
    void keepsTrueTimeOverAReloadAFrozenPageAndASlowProcessor(Browser browser) {
        try (Visit visit = browser.phone(baseUrl())) {
            Page page = visit.open("/guided/1");
            toTheRuns(page);
            CDPSession wire = page.context().newCDPSession(page);
            wire.send("Emulation.setCPUThrottlingRate", rate(6));

            Press from = press(page, 0, "start");
            page.waitForTimeout(1500);
            page.reload();
            freeze(wire, "frozen");
            page.waitForTimeout(2500);
            freeze(wire, "active");
            page.waitForTimeout(500);
            Press to = press(page, 0, "stop");

            assertThat(Press.error(elapsed(page, 0), from, to)).isLessThan(TRUE_TIME);
            assertThat(page.locator("[data-run='0'] .timer-say"))
                    .not()
                    .containsText("clock of this device was changed");
        }
    }

    @Test
    void keepsTrueTimeInTwentyShortRuns(Browser browser) {
        try (Visit visit = browser.phone(baseUrl())) {
            Page page = visit.open("/guided/1");
            toTheRuns(page);
            CDPSession wire = page.context().newCDPSession(page);
            wire.send("Emulation.setCPUThrottlingRate", rate(4));

            double worst = 0;
            for (int i = 0; i < 20; i++) {
                Press from = press(page, 0, "start");
                page.waitForTimeout(100 + 37 * i);
                Press to = press(page, 0, "stop");
                worst = Math.max(worst, Press.error(elapsed(page, 0), from, to));
                page.locator("[data-run='0'] .timer [data-do=again]").click();
            }

            assertThat(worst).isLessThan(TRUE_TIME);
        }
    }

    @Test
    void offersTheMarksOnTheWay(Browser browser) {
        try (Visit visit = browser.phone(baseUrl())) {
            Page page = visit.open("/guided/1");
            toTheRuns(page);

            press(page, 0, "start");
            assertThat(page.locator("[data-run='0'] .timer [data-do=lap]")).hasText("Mark 150 psi");
            page.waitForTimeout(300);
            press(page, 0, "lap");
            page.waitForTimeout(300);
            press(page, 0, "lap");
            page.waitForTimeout(300);
            press(page, 0, "stop");

            assertThat(page.locator("[id='runs0.laps']"))
                    .hasValue(Pattern.compile("150 psi @ \\d+\\.\\d\\d s; 160 psi @ \\d+\\.\\d\\d s"));
        }
    }

    @Test
    void warnsWhenTheClockOfTheDeviceWasSetDuringARun(Browser browser) {
        try (Visit visit = browser.phone(baseUrl())) {
            Page page = visit.open("/guided/1");
            toTheRuns(page);

            press(page, 0, "start");
            page.evaluate("() => { const now = Date.now; Date.now = () => now.call(Date) + 90000; }");
            page.waitForTimeout(300);
            press(page, 0, "stop");

            assertThat(page.locator("[data-run='0'] .timer-say")).containsText("clock of this device was changed");
            assertThat(page.locator("[id='runs0.elapsed.number']")).hasValue("");
            page.locator("[id='runs0.elapsed.number']").fill("1:00.2");
            assertThat(page.locator("[id='runs0.elapsed.number']")).hasValue("1:00.2");
        }
    }

    @Test
    void holdsBackBeforeAVesselOrAMachineThatMustNotBeTested(Browser browser) {
        SentForm hazardous = RECEIVER.with("tag", "R-2").with("reliefSet", "250", "[psi]");
        hazardous.with("confirmed", hazardous.post(site).token()).post(site);
        COMPRESSOR.with("tag", "V-1").with("control", "VARIABLE_SPEED").post(site);
        try (Visit visit = browser.phone(baseUrl())) {
            Page page = visit.open("/guided/1");
            Guide guide = new Guide(page);
            guide.next();
            assertThat(guide.step().locator(".step-say")).containsText("Read the tag");
            guide.fill("tagRead", "C-7");
            guide.next();
            assertThat(guide.step().locator(".step-say")).containsText("The tag says C-7, this page is for C-1");
            guide.fill("tagRead", "C-1");
            assertThat(page.locator(".stop[data-receiver]")).isHidden();
            page.getByLabel("R-2, 120 US gal").check();
            assertThat(page.locator(".stop[data-receiver]")).containsText("above the MAWP");
            guide.next();
            assertThat(guide.step().locator(".step-say")).containsText("must not be pumped up");
            guide.isAt("prepare");
            visit.screenshot("guided-stop");

            visit.open("/guided/2");
            guide.fill("tagRead", "V-1");
            guide.tickAll("prepared");
            guide.next();
            assertThat(guide.step().locator(".step-say")).containsText("would show the control, not wear");
            page.locator("[id='checks.speedHeld']").selectOption("YES");
            guide.next();
            guide.isAt("drain");
        }
    }

    @Test
    void canBeWalkedThroughByKeyboardAlone(Browser browser) {
        try (Visit visit = browser.phone(baseUrl())) {
            Page page = visit.open("/guided/1");
            Guide guide = new Guide(page);
            tabTo(page, "#tagRead");
            page.keyboard().type("C-1");
            for (String tick : List.of("VESSEL_SOUND", "PROTECTED", "PLANT_TOLD")) {
                tabTo(page, "[value=" + tick + "]");
                page.keyboard().press("Space");
            }
            enterNext(page, guide, "drain");
            enterNext(page, guide, "hold");
            for (String tick : List.of("VALVE_SHUT", "NEIGHBOURS_SHUT", "DRAINS_SHUT")) {
                tabTo(page, "[value=" + tick + "]");
                page.keyboard().press("Space");
            }
            enterNext(page, guide, "air");
            enterNext(page, guide, "runs");
            tabTo(page, "[data-run='0'] .timer [data-do=start]");
            page.keyboard().press("Enter");
            page.waitForTimeout(1200);
            page.keyboard().press("Enter"); // the focus went on to Stop
            assertThat(page.locator("[id='runs0.elapsed.number']")).hasValue(Pattern.compile("1\\.\\d\\d"));
            for (String step : List.of("settle", "machine", "result", "back")) {
                enterNext(page, guide, step);
            }
            tabTo(page, "#finish");
        }
    }

    private static void enterNext(Page page, Guide guide, String step) {
        tabTo(page, ".step.here [data-move=next]");
        page.keyboard().press("Enter");
        guide.isAt(step);
    }

    private static void tabTo(Page page, String selector) {
        for (int i = 0; i < 90; i++) {
            if ((boolean) page.evaluate("wanted => document.activeElement.matches(wanted)", selector)) {
                return;
            }
            page.keyboard().press("Tab");
        }
        throw new AssertionError(selector + " cannot be reached by Tab");
    }

    private static void toTheRuns(Page page) {
        Guide guide = new Guide(page);
        guide.prepare();
        guide.drain();
        guide.hold();
        guide.air();
        guide.fill("runs0.startPressure.number", "140");
        guide.fill("runs0.stopPressure.number", "172");
    }

    /** Between which moments a button was pressed, by the clock of this process, in seconds. */
    private record Press(double earliest, double latest) {

        /** How far a time is from any that may have passed between two presses. */
        static double error(double elapsed, Press from, Press to) {
            double least = to.earliest - from.latest;
            double most = to.latest - from.earliest;
            return Math.max(0, Math.max(least - elapsed, elapsed - most));
        }
    }

    /** Presses a button of a stop watch with the mouse. */
    private static Press press(Page page, int run, String what) {
        Locator button = page.locator("[data-run='" + run + "'] .timer [data-do=" + what + "]");
        button.scrollIntoViewIfNeeded();
        BoundingBox box = button.boundingBox();
        page.mouse().move(box.x + box.width / 2, box.y + box.height / 2);
        long before = System.nanoTime();
        page.mouse().down();
        long after = System.nanoTime();
        page.mouse().up();
        return new Press(before / 1e9, after / 1e9);
    }

    private static double elapsed(Page page, int run) {
        return Double.parseDouble(
                page.locator("[id='runs" + run + ".elapsed.number']").inputValue());
    }

    private static JsonObject rate(int times) {
        var asked = new JsonObject();
        asked.addProperty("rate", times);
        return asked;
    }

    private static void freeze(CDPSession wire, String state) {
        var asked = new JsonObject();
        asked.addProperty("state", state);
        wire.send("Page.setWebLifecycleState", asked);
    }
}
