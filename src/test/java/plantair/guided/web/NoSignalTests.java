package plantair.guided.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static plantair.testing.PlantForms.COMPRESSOR;
import static plantair.testing.PlantForms.PIPE;
import static plantair.testing.PlantForms.RECEIVER;
import static plantair.testing.PlantForms.SITE;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plantair.testing.AppProcess;
import plantair.testing.Browser;
import plantair.testing.Client;
import plantair.testing.NeedsBrowser;
import plantair.testing.People;
import plantair.testing.SentForm;
import plantair.testing.Signal;
import plantair.testing.Visit;

/** A phone in a basement: the real program, a real browser, and a wire between them that is cut. */
@NeedsBrowser
final class NoSignalTests {

    /** A device whose clock is four minutes slow; what is shown of a page is as before. */
    private static final String SLOW = """
            const Real = Date;
            window.Date = class extends Real {
              constructor(...given) { if (given.length) { super(...given); } else { super(Real.now() - 240000); } }
              static now() { return Real.now() - 240000; }
            };""";

    /** A machine that does other work too takes its time. */
    private static final double PATIENCE_MS = 40_000;

    @TempDir
    private static Path folder;

    private static AppProcess app;
    private static Signal signal;
    private static Client ann;

    @BeforeAll
    static void aPlant() {
        PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
        app = AppProcess.onH2File(folder);
        ann = Client.first(app);
        for (SentForm form : new SentForm[] {SITE, COMPRESSOR, RECEIVER, PIPE}) {
            ann.saved(form);
        }
        signal = Signal.to(app.baseUrl());
    }

    @AfterAll
    static void stop() {
        signal.close();
        app.close();
    }

    private static long tests() {
        return Jsoup.parse(ann.page("/tests")).select("main tbody tr").size();
    }

    /** Opens the list and the page of the machine, so that they are kept. */
    private static Page open(Visit visit) {
        visit.page().setDefaultTimeout(PATIENCE_MS);
        Page page = visit.open("/guided");
        page.evaluate("() => navigator.serviceWorker.ready.then(() => true)");
        page.waitForFunction("() => navigator.serviceWorker.controller !== null");
        visit.open("/guided/1");
        Guide.awaitKept(page, "/guided");
        Guide.awaitKept(page, "/guided/1");
        return page;
    }

    private static void lose(Page page) {
        signal.cut();
        page.context().setOffline(true);
    }

    private static void find(Page page) {
        signal.mend();
        page.context().setOffline(false);
    }

    private static void waits(Page page, String state, int count) {
        assertThat(queued(page, state)).hasCount(count);
    }

    private static Locator queued(Page page, String state) {
        return page.locator("#queue > li[data-state='" + state + "']");
    }

    @Test
    void completesATestWithoutASignalAndSendsItOnce(Browser browser) {
        long before = tests();
        try (Visit visit = browser.phone(signal.baseUrl())) {
            Page page = open(visit);
            lose(page);
            page.reload();
            Guide guide = new Guide(page);
            guide.prepare();
            guide.drain();
            guide.hold();
            guide.air();
            guide.runs();
            page.waitForTimeout(400);
            page.reload();
            guide.isAt("settle");
            assertThat(guide.field("runs1.elapsed.number")).hasValue("60.8");
            guide.settle();
            guide.machine();
            assertThat(page.locator("#result-answer")).containsText("No signal");
            visit.checkAccessibility();
            guide.result();
            guide.back();
            guide.finish();
            waits(page, "queued", 1);
            visit.screenshot("guided-queued");
            page.reload();
            waits(page, "queued", 1);
            assertThat(tests()).isEqualTo(before);

            find(page);

            waits(page, "sent", 1);
            assertThat(tests()).isEqualTo(before + 1);
            page.reload();
            waits(page, "sent", 1);
            assertThat(tests()).isEqualTo(before + 1);
            page.getByText("Show the test").first().click();
            assertThat(page.locator("#device-offset")).containsText("right to the second");
            visit.takeFaults();
        } finally {
            signal.mend();
        }
    }

    @Test
    void recordsOnceWhenTheServerDiesBetweenRequestAndAnswer(Browser browser) {
        long before = tests();
        try (Visit visit = browser.phone(signal.baseUrl())) {
            Page page = open(visit);
            Guide guide = new Guide(page);
            guide.upToTheEnd();
            signal.loseAnswerTo("POST /guided/1/send");
            int lost = signal.lost();
            guide.finish();
            assertThat(page).hasURL(Pattern.compile(".*/guided$"));
            assertThat(signal.lost()).isEqualTo(lost + 1);
            lose(page);
            app.restart();
            signal.moveTo(app.baseUrl());
            ann.moveTo(app.baseUrl());

            find(page);

            page.reload();
            waits(page, "sent", 1);
            assertThat(tests()).isEqualTo(before + 1);
            visit.takeFaults();
        } finally {
            signal.mend();
        }
    }

    @Test
    void keepsBothVersionsAndAsksAPerson(Browser browser) {
        long before = tests();
        try (Visit visit = browser.phone(signal.baseUrl());
                Visit desk = browser.desktop(app.baseUrl())) {
            visit.page().addInitScript(SLOW);
            Page page = open(visit);
            Guide guide = new Guide(page);
            guide.prepare();
            assertThat(page.locator("#guide-state")).containsText("copied to the server at");
            lose(page);

            Page pc = desk.open("/guided");
            pc.getByText("Go on").last().click();
            pc.locator("#steps [data-go=prepare]").click();
            pc.locator("#tester").fill("Ann at the desk");
            pc.locator(".step.here [data-move=next]").click();
            assertThat(pc.locator("#guide-state")).containsText("copied to the server at");

            guide.drain();
            guide.hold();
            guide.air();
            guide.runs();
            guide.settle();
            guide.machine();
            guide.result();
            guide.back();
            guide.finish();
            waits(page, "queued", 1);
            find(page);
            waits(page, "clash", 1);
            assertThat(tests()).isEqualTo(before);

            page.getByText("Two versions: choose").first().click();
            assertThat(page.locator("#versions")).containsText("Ann at the desk");
            assertThat(page.locator("#versions")).containsText("60.8");
            visit.checkAccessibility();
            visit.screenshot("guided-clash");
            page.locator("main button[type=submit]").last().click();
            guide.isAt("back");
            guide.finish();

            assertThat(page).hasURL(Pattern.compile(".*/tests/\\d+$"));
            assertThat(page.locator("#device-offset")).containsText(Pattern.compile("(4 min 0|3 min 59) s slow"));
            visit.screenshot("guided-test-page");
            assertThat(tests()).isEqualTo(before + 1);
            visit.takeFaults();
        } finally {
            signal.mend();
        }
    }

    @Test
    void waitsForASignInAndThenSends(Browser browser) {
        long before = tests();
        try (Visit visit = browser.phone(signal.baseUrl())) {
            Page page = open(visit);
            lose(page);
            Guide guide = new Guide(page);
            guide.upToTheEnd();
            guide.finish();
            waits(page, "queued", 1);
            page.context().clearCookies();
            find(page);
            waits(page, "signin", 1);

            page.locator("#queue a", new Page.LocatorOptions().setHasText("Sign in to send"))
                    .click();
            page.locator("[name=username]").fill(People.ANN.username());
            assertThat(page.evaluate("() => caches.has('guided-pages')")).isEqualTo(false);
            page.locator("[name=password]").fill(People.PASSWORD);
            page.locator("main button[type=submit]").click();

            waits(page, "sent", 1);
            assertThat(tests()).isEqualTo(before + 1);
            visit.takeFaults();
        } finally {
            signal.mend();
        }
    }

    @Test
    void keepsSeveralTestsApartAndSendsNobodyElses(Browser browser) {
        long before = tests();
        try (Visit visit = browser.phone(signal.baseUrl())) {
            Page page = open(visit);
            lose(page);
            Guide guide = new Guide(page);
            guide.upToTheEnd();
            guide.finish();
            waits(page, "queued", 1);
            visit.open("/guided/1");
            guide.upToTheEnd();
            guide.finish();
            waits(page, "queued", 2);
            page.evaluate(
                    "() => localStorage.setItem('guided-test:x', JSON.stringify({key: 'x', person: 'bo',"
                            + " tag: 'C-1', page: '/guided/1', state: 'queued', content: 'notes=secret', saved: 1, begun: 1}))");

            find(page);

            waits(page, "sent", 2);
            page.reload();
            assertThat(page.locator("#others")).containsText("1 of somebody else");
            assertThat(page.locator("main")).not().containsText("secret");
            assertThat(tests()).isEqualTo(before + 2);
            visit.takeFaults();
        } finally {
            signal.mend();
        }
    }
}
