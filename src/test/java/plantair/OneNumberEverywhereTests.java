package plantair;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.Arrays;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import plantair.equipment.Compressor;
import plantair.quantity.FlowBasis;
import plantair.quantity.FlowRate;
import plantair.quantity.FlowUnit;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureUnit;
import plantair.quantity.Rounded;
import plantair.testing.Client;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.People;
import plantair.testing.Plant;
import plantair.testrecord.PumpUpTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The same readings recorded, and sent by another program: test page, chart table, overview, CSV and answer carry the
 * same digits.
 */
@OnH2
final class OneNumberEverywhereTests {

    /** The readings of {@link Plant}'s planned test. */
    private static final String READINGS = """
            {
              "volumeParts": [
                {"label": "R-1", "volume": {"value": 120, "unit": "[gal_us]"}, "kind": "RECEIVER"},
                {"label": "P-1", "volume": {"value": 2.1, "unit": "[gal_us]"}, "kind": "PIPE"}],
              "elevation": {"value": 600, "unit": "[ft_i]"},
              "barometer": {"value": 14.5, "unit": "[psi]"},
              "intake": {
                "temperature": {"value": 75.0, "unit": "[degF]"},
                "relativeHumidity": {"value": 0, "unit": "%%"}},
              "ratingPoints": [{
                "pressure": {"value": 175, "unit": "[psi]"},
                "flow": {"value": 35, "unit": "[cft_i]/min"},
                "basis": "INTAKE"}],
              "runs": [%s, %s, %s]
            }""";

    private static final String RUN = """
            {
              "start": {"value": 140.0, "unit": "[psi]"},
              "stop": {"value": 172.0, "unit": "[psi]"},
              "elapsed": {"value": %s, "unit": "s"},
              "startAirTemperature": {"value": 95, "unit": "[degF]"},
              "stopAirTemperature": {"value": 95, "unit": "[degF]"}
            }""";

    @Autowired
    private ApplicationContext context;

    @Autowired
    private Database database;

    @LocalServerPort
    private int port;

    private Compressor compressor;
    private PumpUpTest recorded;
    private CSVRecord row;
    private JsonNode answer;

    @BeforeEach
    void recordAndSend() throws Exception {
        database.wipe();
        Plant plant = Plant.in(context);
        compressor = plant.compressor(plant.site());
        String[] seconds = {"60.2", "60.8", "60.5"};
        recorded = plant.test(compressor, "2026-01-05T14:00:00Z", seconds);
        row = row(get("/export/tests.csv"));
        answer = evaluate(
                READINGS.formatted(Arrays.stream(seconds).map(RUN::formatted).toArray()));
    }

    @Test
    void answersWithTheDigitsOfTheFile() {
        double flow = cfm("free_air_m3_per_s");

        assertThat(value("/freeAir/value")).isEqualTo(flow);
        assertThat(value("/freeAir/standardUncertainty")).isEqualTo(flow * inFile("relative_u_combined"));
        assertThat(value("/handMethod/value")).isEqualTo(cfm("hand_method_m3_per_s"));
        assertThat(value("/percentOfRated")).isEqualTo(100 * inFile("rating_ratio"));
        assertThat(value("/midPressure/value"))
                .isEqualTo(new GaugePressure(inFile("mid_pressure_pa")).in(PressureUnit.PSI));
        assertThat(answer.get("methodVersion").stringValue()).isEqualTo(row.get("method_version"));
    }

    @Test
    void answersWithTheStandardFlowsOfTheFile() {
        assertThat(answer.get("standardFlow"))
                .hasSize((int) FlowBasis.standards().count());
        for (JsonNode flow : answer.get("standardFlow")) {
            String column = flow.get("basis").stringValue().toLowerCase(Locale.ROOT) + "_m3_per_s";
            assertThat(flow.get("value").doubleValue()).as(column).isEqualTo(cfm(column));
        }
    }

    @Test
    void answersWithTheFindingsAndStepsOfThePage() throws Exception {
        Document page = Jsoup.parse(get("/tests/" + recorded.id()));
        var codes = answer.get("findings")
                .valueStream()
                .map(finding -> finding.get("code").stringValue())
                .toList();

        assertThat(codes)
                .isNotEmpty()
                .isEqualTo(Arrays.asList(row.get("findings").split(" ")));
        assertThat(page.select("dl.working dd")).hasSize(answer.get("working").size());
    }

    @Test
    void roundsToTheDigitsOfEveryPage() throws Exception {
        double flow = value("/freeAir/value");
        double u = value("/freeAir/standardUncertainty");
        String rounded = Rounded.toUncertainty(flow, u);
        String uncertainty = Rounded.toUncertainty(u, u);

        Document test = Jsoup.parse(get("/tests/" + recorded.id()));
        var chartRow = Jsoup.parse(get("/compressors/" + compressor.id())).select("#flows tbody tr td");
        String overview =
                Jsoup.parse(get("/")).select("#machines td.num").eachText().toString();

        assertThat(test.text()).contains(rounded + " ± " + uncertainty + " cfm");
        assertThat(test.text()).contains(Rounded.significant(value("/handMethod/value"), 4) + " cfm");
        assertThat(chartRow.eachText()).contains(rounded, uncertainty);
        assertThat(overview).contains(rounded + " ± " + uncertainty);
    }

    private double value(String where) {
        return answer.at(where).doubleValue();
    }

    private double inFile(String column) {
        return Double.parseDouble(row.get(column));
    }

    private double cfm(String column) {
        return new FlowRate(inFile(column)).in(FlowUnit.CFM);
    }

    private static CSVRecord row(String file) throws IOException {
        return CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(file.substring(1)))
                .getRecords()
                .get(0);
    }

    private JsonNode evaluate(String readings) throws Exception {
        String answered = send(request("/api/v1/pump-up/evaluate")
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(readings)));
        return JsonMapper.builder().build().readTree(answered);
    }

    private String get(String path) {
        var page = Client.signedIn("http://127.0.0.1:" + port, "ann", People.PASSWORD)
                .get(path);
        assertThat(page.statusCode()).as(path).isEqualTo(200);
        return page.body();
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                .header("Authorization", People.basic());
    }

    private static String send(HttpRequest.Builder request) throws IOException, InterruptedException {
        var answer = HttpClient.newHttpClient().send(request.build(), BodyHandlers.ofString());
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return answer.body();
    }
}
