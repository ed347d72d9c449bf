package plantair.testing;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType.LaunchOptions;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.FormData;
import com.microsoft.playwright.options.ReducedMotion;
import com.microsoft.playwright.options.RequestOptions;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One running Chromium for all tests; each {@link Visit} has its own cookies, and is signed in. */
public final class Browser implements AutoCloseable {

    private static final Pattern TOKEN = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

    private final Playwright playwright;
    private final com.microsoft.playwright.Browser chromium;

    private Browser(Playwright playwright, com.microsoft.playwright.Browser chromium) {
        this.playwright = playwright;
        this.chromium = chromium;
    }

    static Browser launch(Path executable) {
        Playwright playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        return new Browser(
                playwright,
                playwright
                        .chromium()
                        .launch(new LaunchOptions()
                                .setExecutablePath(executable)
                                .setArgs(List.of(
                                        "--no-sandbox", // a container's root has none
                                        "--disable-gpu",
                                        "--disable-quic",
                                        "--no-first-run",
                                        "--disable-background-networking",
                                        "--disable-component-update",
                                        "--disable-sync"))));
    }

    /** Somebody who has not signed in, at a desk screen. */
    public Visit stranger(String baseUrl) {
        return new Visit(context(baseUrl, 1280, 900, false, true));
    }

    /** A phone held upright, with touch: 390 by 844. */
    public Visit phone(String baseUrl) {
        return visit(baseUrl, 390, 844, true, true);
    }

    /** A desk screen: 1280 by 900. */
    public Visit desktop(String baseUrl) {
        return visit(baseUrl, 1280, 900, false, true);
    }

    /** A desk screen with scripts switched off. */
    public Visit withoutScript(String baseUrl) {
        return visit(baseUrl, 1280, 900, false, false);
    }

    private Visit visit(String baseUrl, int width, int height, boolean phone, boolean script) {
        var context = context(baseUrl, width, height, phone, script);
        signIn(context);
        return new Visit(context);
    }

    /** As Ann, where the site asks for it at all. */
    private static void signIn(BrowserContext context) {
        Matcher token = TOKEN.matcher(context.request().get("/login").text());
        if (token.find()) {
            var typed = FormData.create()
                    .set("username", People.ANN.username())
                    .set("password", People.PASSWORD)
                    .set("_csrf", token.group(1));
            context.request().post("/login", RequestOptions.create().setForm(typed));
        }
    }

    private BrowserContext context(String baseUrl, int width, int height, boolean phone, boolean script) {
        return chromium.newContext(new NewContextOptions()
                .setBaseURL(baseUrl)
                .setViewportSize(width, height)
                .setIsMobile(phone)
                .setHasTouch(phone)
                .setJavaScriptEnabled(script)
                .setLocale("en-US")
                .setTimezoneId("UTC")
                .setReducedMotion(ReducedMotion.REDUCE));
    }

    @Override
    public void close() {
        chromium.close();
        playwright.close();
    }
}
