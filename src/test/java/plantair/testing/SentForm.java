package plantair.testing;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;

import jakarta.servlet.http.Cookie;
import java.io.UnsupportedEncodingException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.account.SignedIn;

/** A form as a browser sends it. Each {@code with} gives a new one, so that a test names only what matters to it. */
public record SentForm(String address, Map<String, String> fields) {

    public static SentForm to(String address) {
        return new SentForm(address, Map.of());
    }

    public SentForm at(String otherAddress) {
        return new SentForm(otherAddress, fields);
    }

    public SentForm with(String field, String typed) {
        Map<String, String> more = new LinkedHashMap<>(fields);
        more.put(field, typed);
        return new SentForm(address, more);
    }

    /** With a reading. */
    public SentForm with(String field, String number, String unit) {
        return with(field + ".number", number).with(field + ".unit", unit);
    }

    /** Sends it as Ann. */
    public Answer post(MockMvcTester site) {
        return post(site, People.ANN);
    }

    /** Sends it as somebody else. */
    public Answer post(MockMvcTester site, SignedIn who) {
        var request = site.post().uri(address).with(authentication(People.proof(who)));
        for (var field : fields.entrySet()) {
            request = request.param(field.getKey(), field.getValue());
        }
        return new Answer(request.exchange().getResponse());
    }

    /** A page that somebody asks for. */
    public static Answer get(MockMvcTester site, String address, SignedIn who) {
        return new Answer(site.get()
                .uri(address)
                .with(authentication(People.proof(who)))
                .exchange()
                .getResponse());
    }

    /** A page that Ann asks for. */
    public static Answer get(MockMvcTester site, String address, Cookie... cookies) {
        var request = site.get().uri(address);
        return new Answer((cookies.length == 0 ? request : request.cookie(cookies))
                .exchange()
                .getResponse());
    }

    /** What came back. */
    public record Answer(MockHttpServletResponse response) {

        public int status() {
            return response.getStatus();
        }

        /** Where a redirect leads; null without one. */
        public String redirect() {
            return response.getRedirectedUrl();
        }

        public Document page() {
            try {
                return Jsoup.parse(response.getContentAsString());
            } catch (UnsupportedEncodingException impossible) {
                throw new IllegalStateException(impossible);
            }
        }

        /** What is said beside a field. */
        public String error(String field) {
            var said = page().getElementById(field + "-error");
            return said == null ? "" : said.text();
        }

        /** What is asked beside a field. */
        public String warning(String field) {
            var said = page().getElementById(field + "-warning");
            return said == null ? "" : said.text();
        }

        /** What stands in a field. */
        public String typed(String name) {
            var control = page().selectFirst("main [name=\"" + name + "\"]");
            return control.tagName().equals("select")
                    ? control.select("option[selected]").val()
                    : control.val();
        }

        /** The value of the tick that confirms every warning. */
        public String token() {
            return page().getElementById("confirmed").val();
        }

        public String text() {
            return page().select("main").text();
        }
    }
}
