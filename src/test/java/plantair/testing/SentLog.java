package plantair.testing;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;

import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jsoup.nodes.Element;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.account.SignedIn;

/**
 * The file of a logger as a browser sends it.
 *
 * @param test number of the test
 * @param name of the file
 * @param bytes of the file
 */
public record SentLog(long test, String name, byte[] bytes) {

    /** A file of these lines in UTF-8. */
    public static SentLog of(long test, String name, String text) {
        return new SentLog(test, name, text.getBytes(StandardCharsets.UTF_8));
    }

    /** From 40 to 190 psi in 300 s, every two seconds. */
    public static String rise() {
        return IntStream.rangeClosed(0, 150)
                .mapToObj(i -> 2 * i + "," + (40 + i - i * i / 3000.0))
                .collect(Collectors.joining("\n", "Time (s),Pressure (psi)\n", "\n"));
    }

    public SentForm.Answer send(MockMvcTester site) {
        return send(site, People.ANN);
    }

    public SentForm.Answer send(MockMvcTester site, SignedIn who) {
        return new SentForm.Answer(site.post()
                .uri("/tests/" + test + "/logs/new")
                .multipart()
                .file(new MockMultipartFile("file", name, "text/csv", bytes))
                .with(authentication(People.proof(who)))
                .exchange()
                .getResponse());
    }

    /** Sends it, and gives the form of the columns as it comes back, every guess in it. */
    public SentForm columns(MockMvcTester site) {
        return columns(site, People.ANN);
    }

    public SentForm columns(MockMvcTester site, SignedIn who) {
        String address = send(site, who).redirect();
        SentForm form = SentForm.to(address);
        for (Element control :
                SentForm.get(site, address, who).page().select("main form [name]:not(button):not([name=_csrf])")) {
            boolean open = control.is("[type=radio], [type=checkbox]") && !control.hasAttr("checked");
            String value = control.tagName().equals("select")
                    ? control.select("option[selected]").val()
                    : control.val();
            form = open ? form : form.with(control.attr("name"), value);
        }
        return form;
    }
}
