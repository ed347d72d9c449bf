package plantair.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.boot.webmvc.test.autoconfigure.MockMvcPrint;
import org.springframework.test.web.servlet.assertj.MockMvcTester;

@SpringBootTest(
        classes = {SampleSite.class, SampleSite.Pages.class},
        properties = "spring.messages.basename=messages/web")
@AutoConfigureMockMvc(print = MockMvcPrint.NONE)
class FormPagesTests {

    @Autowired
    private MockMvcTester site;

    @Test
    void givesEveryControlALabelAndAUniqueId() {
        var page = page(site.get().uri("/sample"));

        for (var control : page.select("main input:not([type=hidden]), main select, main textarea")) {
            boolean labelled = control.parent().tagName().equals("label")
                    || control.hasAttr("aria-label")
                    || !page.select("label[for=\"" + control.id() + "\"]").isEmpty();
            assertThat(labelled).as(control.outerHtml()).isTrue();
        }
        assertThat(page.select("[id]").eachAttr("id")).doesNotHaveDuplicates();
        assertThat(page.select("h1")).hasSize(1);
        assertThat(page.html()).doesNotContain("??", "th:");
    }

    @Test
    void describesControlsByNotesThatExist() {
        var page = page(site.post().uri("/sample").param("runs[0].start.number", "7 5"));

        for (var control : page.select("[aria-describedby]")) {
            for (String id : control.attr("aria-describedby").split(" ")) {
                assertThat(page.getElementById(id)).as(control.outerHtml()).isNotNull();
            }
        }
    }

    @Test
    void keepsWhatWasTypedAndSaysWhatIsWrongBesideIt() {
        var answer = site.post()
                .uri("/sample")
                .param("name", "Ann")
                .param("kind", "WATCH")
                .param("runs[1].start.number", "7,05")
                .param("runs[1].start.unit", "bar")
                .param("receivers", "GOOD")
                .param("day", "2024-13-01");

        var page = page(answer);

        assertThat(answer.exchange()).hasStatus(422);
        assertThat(page.getElementById("runs1.start.number").val()).isEqualTo("7,05");
        assertThat(page.getElementById("runs1.start.number").attr("aria-invalid"))
                .isEqualTo("true");
        assertThat(page.getElementById("runs1.start-error").text())
                .isEqualTo(
                        "“7,05” has a comma: write decimals with a dot, as in 7.05, and thousands without any mark.");
        assertThat(page.select("select[name='runs[1].start.unit'] option[selected]")
                        .val())
                .isEqualTo("bar");
        assertThat(page.select("[name=kind] option[selected]").val()).isEqualTo("WATCH");
        assertThat(page.select("[name=receivers][checked]").eachAttr("value")).containsExactly("GOOD");
        assertThat(page.getElementById("day").val()).isEqualTo("2024-13-01");
        assertThat(page.select("#errors a").eachAttr("href")).contains("#runs1.start.number", "#day");
        for (String href : page.select("#errors a").eachAttr("href")) {
            assertThat(page.getElementById(href.substring(1))).as(href).isNotNull();
        }
    }

    @Test
    void asksOnceForAllWarningsAndKeepsTheTick() {
        var page = page(site.post()
                .uri("/sample")
                .param("name", "Ann")
                .param("kind", "GOOD")
                .param("runs[0].start.number", "900"));
        String token = page.getElementById("confirmed").val();

        var confirmed = site.post()
                .uri("/sample")
                .param("name", "Ann")
                .param("kind", "GOOD")
                .param("runs[0].start.number", "900")
                .param("confirmed", token);
        var withSlip =
                site.post().uri("/sample").param("runs[0].start.number", "900").param("confirmed", token);

        assertThat(page.getElementById("runs0.start-warning").text()).contains("900");
        assertThat(page.getElementById("confirmed").hasAttr("checked")).isFalse();
        assertThat(confirmed.exchange()).hasStatus3xxRedirection();
        assertThat(page(withSlip).getElementById("confirmed").hasAttr("checked"))
                .isTrue();
    }

    @Test
    void escapesWhatWasTyped() {
        var page = page(site.post().uri("/sample").param("runs[0].start.number", "<script>alert(1)</script>${7*7}"));

        assertThat(page.select("main script")).isEmpty();
        assertThat(page.getElementById("runs0.start-error").text()).contains("<script>", "${7*7}");
    }

    @Test
    void takesMarkerFieldsAndRepeatedFieldsWithoutFailing() {
        assertThat(site.post().uri("/sample").param("_notes", "1").param("!name", "x"))
                .hasStatus(422);
        assertThat(site.post().uri("/sample").param("name", "a", "b")).hasStatus(422);
    }

    @Test
    void answersBadRequestToRowsAndPropertiesThatCannotBe() {
        assertThat(site.post().uri("/sample").param("runs[5000].start.number", "1"))
                .hasStatus(400);
        assertThat(site.post().uri("/sample").param("runs[x].start.number", "1"))
                .hasStatus(400);
        assertThat(site.post().uri("/sample").param("name.deeper", "1")).hasStatus(422);
    }

    @Test
    void showsResultsInTheUnitsOfTheCookie() {
        var metric = page(site.get().uri("/sample/list").cookie(new jakarta.servlet.http.Cookie("units", "KPA_LITRE")));
        var odd = page(site.get().uri("/sample/list").cookie(new jakarta.servlet.http.Cookie("units", "x")));

        assertThat(metric.select(".status").first().text()).isEqualTo("● steady in KPA_LITRE");
        assertThat(metric.select("#units option[selected]").val()).isEqualTo("KPA_LITRE");
        assertThat(odd.select(".status").first().text()).isEqualTo("● steady in US");
    }

    @Test
    void linksTheNeighbourPagesOfAList() {
        var page = page(site.get().uri("/sample/list?page=2"));

        assertThat(page.select(".pager a").eachAttr("href"))
                .containsExactly("/sample/list?page=1", "/sample/list?page=3");
        assertThat(page.select(".pager").text()).contains("Page 2 of 3, 120 in all");
        assertThat(site.get().uri("/sample/list?page=0")).hasStatus(404);
        assertThat(site.get().uri("/sample/list?page=2147483647")).hasStatus(404);
    }

    private static Document page(MockMvcTester.MockMvcRequestBuilder request) {
        try {
            return Jsoup.parse(request.exchange().getResponse().getContentAsString());
        } catch (java.io.UnsupportedEncodingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
