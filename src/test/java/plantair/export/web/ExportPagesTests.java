package plantair.export.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import plantair.equipment.Compressor;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.quantity.Rounded;
import plantair.testing.Client;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.People;
import plantair.testing.Plant;

/** Over the wire, as a browser gets it. */
abstract class ExportPagesTests {

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Database database;

    @Autowired
    private JdbcTemplate jdbc;

    @LocalServerPort
    private int port;

    private Plant plant;
    private Compressor compressor;

    @BeforeEach
    void emptyPlant() {
        database.wipe();
        plant = Plant.in(context);
        compressor = plant.compressor(plant.site("Süd", "America/Chicago"));
    }

    @Test
    void sendsAFileThatASpreadsheetOpens() throws Exception {
        plant.plan(compressor).notes("é\n\"=1\"").record();

        HttpResponse<byte[]> answer = get("/export/tests.csv");
        byte[] body = answer.body();

        assertThat(answer.headers().firstValue("content-type")).hasValue("text/csv;header=present;charset=UTF-8");
        assertThat(answer.headers().firstValue("content-disposition"))
                .hasValue("attachment; filename=\"plant-air-tests-2026-06-15.csv\"");
        assertThat(body).startsWith(0xEF, 0xBB, 0xBF);
        assertThat(rows(body).get("site")).isEqualTo("Süd");
        assertThat(rows(body).get("notes")).isEqualTo("é\n\"=1\"");
    }

    @Test
    void sendsEverythingAsOneZip() throws Exception {
        plant.plan(compressor).record();

        HttpResponse<byte[]> answer = get("/export/all.zip");

        assertThat(answer.headers().firstValue("content-type")).hasValue("application/zip");
        assertThat(answer.headers().firstValue("content-disposition"))
                .hasValue("attachment; filename=\"plant-air-records-2026-06-15.zip\"");
        assertThat(answer.body()).startsWith('P', 'K');
    }

    @Test
    void sendsEachFileOfTheZipAlone() throws Exception {
        assertThat(new String(get("/export/sites.csv").body(), StandardCharsets.UTF_8))
                .startsWith("\uFEFFsite_id,name,")
                .contains("Süd");
        assertThat(new String(get("/export/dictionary.csv").body(), StandardCharsets.UTF_8))
                .startsWith("\uFEFFfile,column,meaning,unit");
        assertThat(get("/export/accounts.csv").statusCode()).isEqualTo(404);
        assertThat(get("/export/all.csv").statusCode()).isEqualTo(404);
    }

    @Test
    void sendsTheAuditPackOfAMachine() throws Exception {
        plant.plan(compressor).record();

        HttpResponse<byte[]> answer = get("/export/pack/" + compressor.id() + ".zip?from=2026-01-01&to=2026-12-31");

        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).startsWith('P', 'K');
        assertThat(get("/export/pack?compressor=" + compressor.id() + "&from=2026-01-01&to=")
                        .headers()
                        .firstValue("location"))
                .hasValueSatisfying(address ->
                        assertThat(address).endsWith("/export/pack/" + compressor.id() + ".zip?from=2026-01-01&to="));
        assertThat(get("/export/pack").statusCode()).isEqualTo(422);
        assertThat(get("/export/pack/999.zip").statusCode()).isEqualTo(422);
        assertThat(get("/export/pack/" + compressor.id() + ".zip?from=x").statusCode())
                .isEqualTo(422);
    }

    @Test
    void sendsTheHeaderWhenThereIsNoTest() throws Exception {
        assertThat(new String(get("/export/tests.csv").body(), StandardCharsets.UTF_8))
                .startsWith("\uFEFFtest_id,run,")
                .endsWith("\r\n");
    }

    @Test
    void offersSitesAndMachines() throws Exception {
        Document page = page("/export?compressor=" + compressor.id());

        assertThat(page.select("#site option").eachText()).contains("Süd");
        assertThat(page.select("#compressor option[selected]").text()).isEqualTo("Süd – C-1");
        assertThat(page.select("form[action=/export/tests.csv]")).hasSize(1);
        assertThat(page.text()).doesNotContain("??");
    }

    @Test
    void saysBesideTheFieldWhatCannotBeRead() throws Exception {
        String wrong = "/export/tests.csv?site=77&compressor=x&from=2026-02-30&to=";

        Document page = page(wrong);

        assertThat(get(wrong).statusCode()).isEqualTo(422);
        assertThat(get("/export/tests.csv?from=1900-01-01&to=9999-12-31").statusCode())
                .isEqualTo(200);
        assertThat(page.select("#site-error").text()).contains("77");
        assertThat(page.select("#compressor-error").text()).contains("x");
        assertThat(page.select("#from").val()).isEqualTo("2026-02-30");
        assertThat(page("/export/tests.csv?from=2026-02-02&to=2026-02-01")
                        .select("#to-error")
                        .text())
                .isEqualTo("The last day is before the first.");
    }

    @Test
    void answersWithAPageWhenTheFirstRowsFail() throws Exception {
        plant.plan(compressor).record();
        jdbc.update("update pump_up_result set detail = 'broken'");

        HttpResponse<byte[]> answer = get("/export/tests.csv");

        assertThat(answer.statusCode()).isEqualTo(500);
        assertThat(answer.headers().firstValue("content-type").orElse("")).startsWith("text/html");
        assertThat(answer.headers().firstValue("content-disposition")).isEmpty();
        assertThat(answer.headers().firstValue("content-security-policy")).isPresent();
    }

    @Test
    void breaksOffWhenALaterRowFails() {
        for (int i = 0; i < 210; i++) {
            plant.plan(compressor).record();
        }
        jdbc.update("update pump_up_result set detail = 'broken' where test_id = 205");

        assertThatThrownBy(() -> get("/export/tests.csv")).isInstanceOf(UncheckedIOException.class);
    }

    @Test
    void showsOneFlowOnOverviewCompressorPageAndInTheFile() throws Exception {
        plant.test(compressor, "2026-01-05T14:00:00Z", "60.2", "60.8", "60.5");
        plant.test(compressor, "2026-04-05T14:00:00Z", "63.2", "63.8", "63.5");

        String overview = page("/").select("#machines td.num").get(1).child(0).text();
        var cells = page("/compressors/" + compressor.id())
                .select("#flows tbody tr")
                .first()
                .select("td");
        CSVRecord last = rows(get("/export/tests.csv?from=2026-04-01").body());
        double flow = new FlowRate(Double.parseDouble(last.get("free_air_m3_per_s"))).in(FlowUnit.CFM);
        double u = flow * Double.parseDouble(last.get("relative_u_combined"));

        assertThat(overview)
                .isEqualTo(cells.get(0).text() + " ± " + cells.get(2).text());
        assertThat(overview).isEqualTo(Rounded.toUncertainty(flow, u) + " ± " + Rounded.toUncertainty(u, u));
    }

    private static CSVRecord rows(byte[] body) throws IOException {
        String text = new String(body, StandardCharsets.UTF_8).substring(1);
        return CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(text))
                .getRecords()
                .get(0);
    }

    private Document page(String path) throws Exception {
        return Jsoup.parse(new String(get(path).body(), StandardCharsets.UTF_8));
    }

    private HttpResponse<byte[]> get(String path) {
        return Client.signedIn("http://127.0.0.1:" + port, "dee", People.PASSWORD)
                .file(path);
    }
}

@OnH2
final class ExportPagesOnH2Tests extends ExportPagesTests {}

@OnPostgres
final class ExportPagesOnPostgresTests extends ExportPagesTests {}
