package plantair.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.JdbcTemplate;
import plantair.testing.Database;
import plantair.testing.OnH2;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Good requests. */
@OnH2
final class EvaluateTests {

    @LocalServerPort
    private int port;

    @Autowired
    private Database database;

    @Autowired
    private JdbcTemplate jdbc;

    private Caller caller;

    @BeforeEach
    void call() {
        caller = new Caller(port);
    }

    @Test
    void answersWithAllOfTheResult() {
        JsonNode answer = caller.evaluate(Caller.example()).json();

        assertThat(answer.propertyNames())
                .containsExactly(
                        "methodVersion",
                        "airTemperature",
                        "netVolume",
                        "midPressure",
                        "handMethod",
                        "freeAir",
                        "atRatedSpeed",
                        "standardFlow",
                        "percentOfRated",
                        "budget",
                        "findings",
                        "working");
        assertThat(answer.at("/freeAir/unit").stringValue()).isEqualTo("[cft_i]/min");
        assertThat(answer.at("/freeAir/basis").stringValue()).isEqualTo("INTAKE");
        assertThat(answer.at("/freeAir/standardUncertainty").doubleValue()).isPositive();
        assertThat(answer.get("standardFlow")).hasSize(5);
        assertThat(answer.get("working").size()).isGreaterThan(20);
        assertThat(answer.get("atRatedSpeed").isNull()).isTrue();
    }

    /** Own case, worked by hand: 80 US gal, 95 to 125 psig, 62.4 s, 14.6 psia: V (p2 − p1)/(Pa t) = 21.13 cfm. */
    @Test
    void agreesWithAHandCalculation() {
        ObjectNode request = shortened("NOT_MEASURED");
        request.remove("ratingPoints");
        ((ArrayNode) request.get("volumeParts")).remove(1);
        request.set("barometer", quantity(14.6, "[psi]"));
        ((ArrayNode) request.get("runs")).removeAll();
        ((ArrayNode) request.get("runs"))
                .addObject()
                .<ObjectNode>set("start", quantity(95, "[psi]"))
                .<ObjectNode>set("stop", quantity(125, "[psi]"))
                .set("elapsed", quantity(62.4, "s"));

        JsonNode answer = caller.evaluate(request).json();

        assertThat(answer.at("/handMethod/value").doubleValue()).isCloseTo(21.13, within(0.005));
        assertThat(answer.at("/midPressure/value").doubleValue()).isCloseTo(110, within(1e-9));
        assertThat(answer.at("/netVolume/value").doubleValue()).isCloseTo(80, within(1e-9));
        assertThat(answer.get("percentOfRated").isNull()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"MEASURED", "SETTLED", "NOT_MEASURED"})
    void infersHowTheAirWasTreated(String treatment) {
        JsonNode answer = caller.evaluate(shortened(treatment)).json();

        assertThat(answer.get("airTemperature").stringValue()).isEqualTo(treatment);
    }

    @ParameterizedTest
    @CsvSource({
        "US,[cft_i]/min,[psi],[gal_us]",
        "BAR_LITRE,L/s,bar,L",
        "BAR_CUBIC,m3/min,bar,L",
        "KPA_LITRE,L/s,kPa,L",
        "KGF_CUBIC,m3/min,kgf/cm2,L"
    })
    void answersInTheUnitsAskedFor(String set, String flow, String pressure, String volume) {
        JsonNode answer = caller.evaluate(Caller.example(), "?units=" + set).json();

        assertThat(answer.at("/freeAir/unit").stringValue()).isEqualTo(flow);
        assertThat(answer.at("/handMethod/unit").stringValue()).isEqualTo(flow);
        assertThat(answer.at("/midPressure/unit").stringValue()).isEqualTo(pressure);
        assertThat(answer.at("/netVolume/unit").stringValue()).isEqualTo(volume);
    }

    /** 1 cfm is 0.4719474432 L/s (exact: 0.3048³ m³ in 60 s). */
    @Test
    void saysTheSameFlowInEachUnit() {
        double cfm = freeAir(caller.evaluate(Caller.example()).json());
        double litres =
                freeAir(caller.evaluate(Caller.example(), "?units=BAR_LITRE").json());

        assertThat(cfm * 0.4719474432).isCloseTo(litres, within(1e-12 * litres));
    }

    @Test
    void givesNoFigureForRunsThatDrift() {
        ObjectNode request = Caller.example();
        List<Integer> seconds = List.of(50, 60, 70);
        for (int i = 0; i < 3; i++) {
            ((ObjectNode) request.at("/runs/" + i)).set("elapsed", quantity(seconds.get(i), "s"));
        }

        JsonNode answer = caller.evaluate(request).json();

        assertThat(answer.get("freeAir").isNull()).isTrue();
        assertThat(answer.get("standardFlow")).isEmpty();
        assertThat(answer.get("findings")
                        .valueStream()
                        .map(finding -> finding.get("code").stringValue()))
                .contains("RUNS_DRIFT");
        assertThat(answer.at("/handMethod/value").doubleValue()).isPositive();
    }

    @Test
    void takesEverythingThatIsOptional() {
        ObjectNode request = shortened("SETTLED");
        request.set("elevation", quantity(650, "[ft_i]"));
        request.set("displacement", quantity(27, "[cft_i]/min"));
        request.set("speed", quantity(900, "{rev}/min"));
        request.set("ratedSpeed", quantity(920, "{rev}/min"));
        request.putObject("gauge")
                .put("accuracyPercent", 1.5)
                .<ObjectNode>set("span", quantity(200, "[psi]"))
                .set("division", quantity(2, "[psi]"));
        request.putObject("motor")
                .put("volts", 460)
                .put("amps", 6.6)
                .put("phases", 3)
                .put("powerFactor", 0.84)
                .put("efficiency", 0.885)
                .set("power", quantity(5, "[HP]"));
        request.putObject("hold")
                .put("place", "TEST_VOLUME")
                .<ObjectNode>set("start", quantity(124, "[psi]"))
                .<ObjectNode>set("end", quantity(123.5, "[psi]"))
                .set("wait", quantity(10, "min"));

        var answer = caller.evaluate(request);

        assertThat(answer.status()).as(answer.body()).isEqualTo(200);
        assertThat(answer.json().at("/atRatedSpeed/value").doubleValue())
                .isCloseTo(freeAir(answer.json()) * 920 / 900, within(1e-9));
    }

    @Test
    void storesNothing() {
        database.wipe();
        Map<String, Integer> before = rows();

        caller.evaluate(Caller.example());

        assertThat(rows()).isNotEmpty().isEqualTo(before);
    }

    private Map<String, Integer> rows() {
        return database.tables().stream()
                .collect(Collectors.toMap(
                        table -> table,
                        table -> jdbc.queryForObject("select count(*) from \"" + table + "\"", Integer.class)));
    }

    private static double freeAir(JsonNode answer) {
        return answer.at("/freeAir/value").doubleValue();
    }

    static ObjectNode quantity(double value, String unit) {
        return Caller.JSON.createObjectNode().put("value", value).put("unit", unit);
    }

    /** The example with its air treated in another way. */
    private static ObjectNode shortened(String treatment) {
        ObjectNode request = Caller.example();
        for (JsonNode node : request.get("runs")) {
            var run = (ObjectNode) node;
            if (!treatment.equals("MEASURED")) {
                run.remove(List.of("startAirTemperature", "stopAirTemperature"));
            }
            if (treatment.equals("SETTLED")) {
                run.putObject("settled")
                        .<ObjectNode>set("pressure", quantity(121, "[psi]"))
                        .<ObjectNode>set("airTemperature", quantity(76, "[degF]"))
                        .set("wait", quantity(15, "min"));
            }
        }
        return request;
    }
}
