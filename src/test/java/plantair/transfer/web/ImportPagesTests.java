package plantair.transfer.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.Plant;
import plantair.testing.SentForm;
import plantair.transfer.LogColumns;

/** From the upload to the records. */
@OnH2
class ImportPagesTests {

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Database database;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private MockMvcTester site;

    @BeforeEach
    void plant() {
        database.wipe();
        Plant plant = Plant.in(context);
        var works = plant.site();
        plant.compressor(works);
        plant.receiver(works);
    }

    @Test
    void takesInALogThatWasLookedThrough() throws Exception {
        String page = uploaded("log.csv", log("C-1"));
        Document checked = settled(page);

        assertThat(checked.select("main button").text()).isEqualTo("Import these 1 tests");
        assertThat(checked.select("main").text()).contains("1 new tests", "Looked through. Nothing was written.");
        assertThat(jdbc.queryForObject("select count(*) from pump_up_test", Long.class))
                .isZero();
        assertThat(SentForm.to(page).post(site).redirect()).isEqualTo(page);
        assertThat(settled(page).select("main").text()).contains("Done: 1 tests were taken in.");
        assertThat(SentForm.to(page).post(site).redirect()).isEqualTo(page);
        assertThat(settled(page).select("main").text()).contains("Done: 1 tests were taken in.");
        assertThat(jdbc.queryForObject("select count(*) from pump_up_test", Long.class))
                .isEqualTo(1);
    }

    /** As an instance that was killed leaves it: under way, and nobody says that he is at it. */
    @Test
    void showsThatItBrokeOffAndBeginsAgain() throws Exception {
        String page = uploaded("log.csv", log("C-1"));
        settled(page);
        for (String left : new String[] {"CHECKING", "RECORDING"}) {
            jdbc.update("update import_job set stage = ?, sound = ?", left, left.equals("RECORDING"));

            Document brokenOff = settled(page);

            assertThat(brokenOff.select("main").text()).contains("Broken off", "Nothing of the file was taken in");
            assertThat(brokenOff.select("main button").text()).isEqualTo("Begin again");
            assertThat(SentForm.to(page).post(site).redirect()).isEqualTo(page);
            assertThat(settled(page).select("main").text())
                    .contains(left.equals("CHECKING") ? "Looked through." : "Done: 1 tests were taken in.");
        }
        assertThat(jdbc.queryForObject("select count(*) from pump_up_test", Long.class))
                .isEqualTo(1);
    }

    @Test
    void showsProblemsAndOffersNothing() throws Exception {
        Document page = settled(uploaded("<b>log\u202E.csv", log("C-9")));

        assertThat(page.select("main button")).isEmpty();
        assertThat(page.select("h1").text()).isEqualTo("Import of <b>log.csv");
        assertThat(page.select("tbody tr").text())
                .contains("2 compressor There is no compressor C-9 at the site North works in the register.");
    }

    @Test
    void givesATemplateThatItReads() throws Exception {
        String template = site.get()
                .uri("/import/template.csv")
                .exchange()
                .getResponse()
                .getContentAsString(StandardCharsets.UTF_8);

        assertThat(template).isEqualTo("\uFEFF" + String.join(",", LogColumns.template()) + "\r\n");
        Document page = settled(uploaded("template.csv", template));
        assertThat(page.select("main").text()).contains("There is no test in this file.");
    }

    @Test
    void answersNonsenseWithAPage() throws Exception {
        assertThat(SentForm.get(site, "/import").status()).isEqualTo(200);
        assertThat(SentForm.to("/import").post(site).status()).isEqualTo(422);
        assertThat(SentForm.get(site, "/import/x").status()).isEqualTo(400);
        assertThat(SentForm.get(site, "/import/00000000-0000-0000-0000-000000000000")
                        .status())
                .isEqualTo(404);
        assertThat(settled(uploaded("a.zip", "PKrubbish")).select("main").text())
                .contains("The zip has no file");
    }

    private static String log(String tag) {
        return "site,compressor,date,time,tester,receivers,start_pressure,start_pressure_unit,stop_pressure,"
                + "stop_pressure_unit,elapsed,elapsed_unit,intake_temperature,intake_temperature_unit\n"
                + "North works," + tag + ",2019-03-01,14:30,Ann,R-1,140,psi,172,psi,60,s,70,°F\n";
    }

    private String uploaded(String name, String text) {
        return site.post()
                .uri("/import")
                .multipart()
                .file(new MockMultipartFile("file", name, "text/csv", text.getBytes(StandardCharsets.UTF_8)))
                .exchange()
                .getResponse()
                .getRedirectedUrl();
    }

    /** The page once nothing is under way any more. */
    private Document settled(String address) throws Exception {
        for (int i = 0; i < 600; i++) {
            var answer = site.get().uri(address).exchange().getResponse();
            assertThat(answer.getStatus()).isEqualTo(200);
            if (answer.getHeader("Refresh") == null) {
                return Jsoup.parse(answer.getContentAsString(StandardCharsets.UTF_8));
            }
            Thread.sleep(100);
        }
        throw new IllegalStateException("still busy");
    }
}
