package plantair.guided.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.List;

/** A person with the page of a guided test in hand. */
final class Guide {

    static final List<String> STEPS =
            List.of("prepare", "drain", "hold", "air", "runs", "settle", "machine", "result", "back");

    private final Page page;

    Guide(Page page) {
        this.page = page;
    }

    Locator field(String id) {
        return page.locator("[id='" + id + "']");
    }

    void fill(String id, String text) {
        field(id).fill(text);
    }

    Locator step() {
        return page.locator(".step.here");
    }

    void isAt(String step) {
        assertThat(page.locator(".step.here[data-step='" + step + "']")).isVisible();
    }

    void next() {
        step().locator("[data-move=next]").click();
    }

    void tickAll(String name) {
        for (Locator box : page.locator("[name='" + name + "']").all()) {
            box.check();
        }
    }

    void prepare() {
        isAt("prepare");
        fill("tagRead", "C-1");
        page.getByLabel("R-1, 120 US gal").check();
        page.getByLabel("P-1, 2.1 US gal").check();
        tickAll("prepared");
        next();
    }

    void drain() {
        isAt("drain");
        fill("drained.number", "1.5");
        next();
    }

    void hold() {
        isAt("hold");
        tickAll("isolated");
        fill("checks.holdStart.number", "170.0");
        fill("checks.holdEnd.number", "169.9");
        fill("checks.holdWait.number", "5:00");
        next();
    }

    void air() {
        isAt("air");
        fill("intakeTemperature.number", "75");
        fill("intakeHumidity.number", "0");
        fill("barometer.number", "29.5");
        next();
    }

    void run(int run, String seconds) {
        String at = "runs" + run + ".";
        fill(at + "startPressure.number", "140.0");
        fill(at + "stopPressure.number", "172.0");
        fill(at + "startAir.number", "95");
        fill(at + "elapsed.number", seconds);
        fill(at + "stopAir.number", "95");
    }

    void runs() {
        isAt("runs");
        run(0, "60.2");
        run(1, "60.8");
        run(2, "60.5");
        next();
    }

    void settle() {
        isAt("settle");
        page.getByLabel("short vent, then silence").check();
        next();
    }

    void machine() {
        isAt("machine");
        fill("figures.hours.number", "12034");
        next();
    }

    void result() {
        isAt("result");
        next();
    }

    void back() {
        isAt("back");
        tickAll("putBack");
    }

    /** All of it but the last press. */
    void upToTheEnd() {
        prepare();
        drain();
        hold();
        air();
        runs();
        settle();
        machine();
        result();
        back();
    }

    void finish() {
        page.locator("#finish").click();
    }

    /** Waits until a page is kept on the device. A function that Playwright waits for would not be awaited if it were asynchronous. */
    static void awaitKept(Page page, String path) {
        for (int i = 0; !page.evaluate("path => guided.isKept(path)", path).equals(true); i++) {
            if (i == 400) {
                throw new AssertionError(path + " is not kept");
            }
            page.waitForTimeout(100);
        }
    }
}
