package plantair.stories;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.servlet.http.Cookie;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.nodes.Document;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.testing.SentForm;

/** What a person reads on the page of a test. */
record TestPage(Document page) {

    static final String FREE_AIR = "Free air delivered";
    static final String HAND = "Hand method, air temperature ignored";
    static final String OF_RATING = "Of the rating";
    static final String OF_BASELINE = "Of its own baseline";
    static final String SPREAD = "Spread of the runs";
    static final String VERDICT = "Does it meet its rating";

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    static TestPage of(MockMvcTester site, String address, Cookie... cookies) {
        var answer = SentForm.get(site, address, cookies);
        assertThat(answer.status()).as(address).isEqualTo(200);
        return new TestPage(answer.page());
    }

    /** All its text. */
    String text() {
        return page.select("main").text();
    }

    /** What is said beside one name of the result. */
    String says(String name) {
        return page.select("dl.result > dt").stream()
                .filter(dt -> dt.text().equals(name))
                .map(dt -> dt.nextElementSibling().text())
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + name + " in: " + text()));
    }

    /** The figure beside one name of the result. */
    double figure(String name) {
        return first(says(name));
    }

    /** The standard uncertainty beside the flow. */
    double uncertainty() {
        return first(says(FREE_AIR).replaceFirst(".*?±", ""));
    }

    /** Free air delivered of each run. */
    List<Double> runs() {
        return page.select("section[aria-labelledby=runs] tbody td:last-child").stream()
                .map(cell -> first(cell.text()))
                .toList();
    }

    List<String> findings() {
        return page.select("ul.findings li").eachText();
    }

    /** The one finding that says this. */
    String finding(String part) {
        return findings().stream()
                .filter(finding -> finding.contains(part))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no \"" + part + "\" in: " + findings()));
    }

    List<String> explanations() {
        return page.select("section[aria-labelledby=explain] li").eachText();
    }

    List<String> components() {
        return page.select("section[aria-labelledby=uncertainty] tbody th").eachText();
    }

    /** The first number in a text. */
    static double first(String text) {
        Matcher matcher = NUMBER.matcher(text);
        assertThat(matcher.find()).as(text).isTrue();
        return Double.parseDouble(matcher.group());
    }
}
