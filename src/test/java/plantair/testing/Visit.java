package plantair.testing;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.ConsoleMessage;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Request;
import com.microsoft.playwright.Response;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * One person's way through the pages. Closing it fails the test if a script failed, the content security policy
 * refused something, a part of a page could not be loaded, or the server failed. A page answered with 4xx is no fault by
 * itself: a refused form is.
 */
public final class Visit implements AutoCloseable {

    private static final Path SCREENSHOTS = Path.of("target", "screenshots");

    private final BrowserContext context;
    private final Page page;
    private final List<String> faults = new ArrayList<>();

    Visit(BrowserContext context) {
        this.context = context;
        context.onConsoleMessage(this::noteConsole);
        context.onWebError(error -> faults.add("script failed: " + error.error()));
        context.onResponse(this::noteResponse);
        context.onRequestFailed(this::noteFailure);
        this.page = context.newPage();
    }

    public Page page() {
        return page;
    }

    /** Opens a path of the application, such as {@code /compressors}. */
    public Page open(String path) {
        page.navigate(path);
        return page;
    }

    /** What went wrong so far, for a test that expects it; the list is emptied. */
    public List<String> takeFaults() {
        page.evaluate("1"); // every earlier message of the browser has arrived when this has been answered
        List<String> taken = List.copyOf(faults);
        faults.clear();
        return taken;
    }

    /** Keeps a picture of the whole page in target/screenshots. */
    public Path screenshot(String name) {
        Path file = SCREENSHOTS.resolve(name + ".png");
        page.screenshot(new Page.ScreenshotOptions().setPath(file).setFullPage(true));
        return file;
    }

    /** Fails with a list of the barriers that axe finds on the page as it stands. */
    public void checkAccessibility() {
        List<Rule> found = new AxeBuilder(page).analyze().getViolations();
        if (!found.isEmpty()) {
            throw new AssertionError(page.url() + " is barred to some readers:\n"
                    + found.stream().map(Visit::described).collect(Collectors.joining("\n")));
        }
    }

    @Override
    public void close() {
        List<String> left = takeFaults();
        String url = page.url();
        context.close();
        if (!left.isEmpty()) {
            throw new AssertionError("Faults up to " + url + ":\n" + String.join("\n", left));
        }
    }

    private static String described(Rule rule) {
        return "%s, %s: %s%s"
                .formatted(
                        rule.getImpact(),
                        rule.getId(),
                        rule.getHelp(),
                        rule.getNodes().stream()
                                .map(node -> "\n    " + node.getHtml())
                                .collect(Collectors.joining()));
    }

    private void noteConsole(ConsoleMessage message) {
        // a failed load is noted by its response, which tells pages from parts of pages
        if (message.type().equals("error") && !message.text().startsWith("Failed to load resource")) {
            faults.add("console: " + message.text() + " (" + message.location() + ")");
        }
    }

    private void noteResponse(Response response) {
        boolean part = !response.request().isNavigationRequest();
        if (response.status() >= 500 || part && response.status() >= 400) {
            faults.add("answered " + response.status() + ": " + response.url());
        }
    }

    private void noteFailure(Request request) {
        if (!request.isNavigationRequest()) { // a download ends its navigation in this way
            faults.add("not loaded: " + request.url() + " (" + request.failure() + ")");
        }
    }
}
