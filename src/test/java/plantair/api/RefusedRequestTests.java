package plantair.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest.BodyPublishers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.test.web.server.LocalServerPort;
import plantair.testing.OnH2;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Bad requests: each is told what is wrong, and none is a failure of ours. */
@OnH2
final class RefusedRequestTests {

    private static final String[] RUBBISH = {
        "null",
        "true",
        "\"\"",
        "\"121\"",
        "\"1:02.4\"",
        "[]",
        "[[]]",
        "[null]",
        "{}",
        "{\"value\": null}",
        "{\"value\": 1e308, \"unit\": \"s\"}",
        "{\"value\": -1e999, \"unit\": \"bar\"}",
        "{\"value\": 1e-300, \"unit\": \"L\"}",
        "{\"value\": 0, \"unit\": \"K\"}",
        "{\"value\": 1, \"unit\": null}",
        "{\"value\": \"NaN\", \"unit\": \"[psi]\"}",
        "{\"value\": 121, \"unit\": \"m:ss\"}",
        "0",
        "-1",
        "1e999",
        "123456789012345678901234567890"
    };

    @LocalServerPort
    private int port;

    private Caller caller;

    @BeforeEach
    void call() {
        caller = new Caller(port);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/barometer|{\"value\": 121, \"unit\": \"[psi]\"}|barometer|range.BAROMETER",
                "/barometer|null|barometer|api.station",
                "/elevation|{\"value\": 9000, \"unit\": \"m\"}|elevation|api.limits",
                "/elevation|{\"value\": 600, \"unit\": \"[psi]\"}|elevation.unit|api.unit",
                "/intake|null|intake|api.missing",
                "/intake/temperature|{\"value\": 71, \"unit\": \"Cel\"}|intake.temperature|range.INTAKE_TEMPERATURE",
                "/intake/relativeHumidity|{\"value\": 101, \"unit\": \"%\"}|intake.relativeHumidity|api.impossible",
                "/intake/relativeHumidity|{\"value\": 50, \"unit\": \"V\"}|intake.relativeHumidity.unit|api.unit",
                "/runs|[]|runs|api.empty",
                "/runs|{}|runs|api.notArray",
                "/runs/0|7|runs[0]|api.notObject",
                "/runs/0/stop|{\"value\": 96, \"unit\": \"[psi]\"}|runs[0].stop|test.stopNotAboveStart",
                "/runs/0/stop|{\"value\": 124, \"unit\": \"PSI\"}|runs[0].stop.unit|api.unit",
                "/runs/0/stop|{\"value\": \"124\", \"unit\": \"[psi]\"}|runs[0].stop.value|api.notNumber",
                "/runs/0/stop|{\"value\": 124, \"unit\": \"[psi]\", \"gauge\": 1}|runs[0].stop.gauge|api.unknownField",
                "/runs/0/stop|124|runs[0].stop|api.notQuantity",
                "/runs/1/elapsed|{\"value\": 0, \"unit\": \"s\"}|runs[1].elapsed|range.ELAPSED",
                "/runs/1/elapsed|{\"value\": -3, \"unit\": \"s\"}|runs[1].elapsed|range.ELAPSED",
                "/runs/1/elapsed|{\"value\": 1, \"unit\": \"m:ss\"}|runs[1].elapsed.unit|api.unit",
                "/runs/2/stopAirTemperature|null|runs[2].stopAirTemperature|api.airMixed",
                "/runs/2/finish|1|runs[2].finish|api.unknownField",
                "/volumeParts|[]|volumeParts|api.empty",
                "/volumeParts/0/kind|\"WATER\"|volumeParts|test.drowned",
                "/volumeParts/0/kind|\"TANK\"|volumeParts[0].kind|api.choice",
                "/volumeParts/0/label|7|volumeParts[0].label|api.notText",
                "/volumeParts/0/volume|{\"value\": 0, \"unit\": \"L\"}|volumeParts[0].volume|number.notPositive",
                "/volumeParts/0/volume|{\"value\": -2, \"unit\": \"L\"}|volumeParts[0].volume|api.impossible",
                "/volumeParts/0/volume|{\"value\": 1e9, \"unit\": \"L\"}|volumeParts[0].volume.value|api.numberSize",
                "/volumeParts/0/volume|{\"value\": 1e-10, \"unit\": \"L\"}|volumeParts[0].volume.value|api.numberSize",
                "/ratingPoints/0/basis|\"FAD\"|ratingPoints[0].basis|api.choice",
                "/ratingPoints/0/flow|{\"value\": 0, \"unit\": \"L/s\"}|ratingPoints[0].flow|number.notPositive",
                "/motor|{\"volts\": 460}|motor.amps|api.motor",
                "/motor|{\"phases\": 2}|motor.phases|api.phases",
                "/hold|{}|hold.start|api.missing",
                "/speed|{\"value\": 1, \"unit\": \"{rev}/min\"}|speed|range.SPEED",
                "/compressor|\"C-1\"|compressor|api.unknownField"
            })
    void namesTheFieldAndWhatIsWrong(String where, String json, String field, String code) {
        var answer = caller.evaluate(changed(where, json));

        assertThat(answer.status()).as(answer.body()).isEqualTo(422);
        assertThat(answer.contentType()).isEqualTo("application/problem+json");
        assertThat(answer.fields()).contains(field);
        assertThat(answer.codes().get(answer.fields().indexOf(field))).isEqualTo(code);
        assertThat(answer.body()).doesNotContain("??", "Exception", "plantair.");
        assertThat(answer.json().get("status").intValue()).isEqualTo(422);
    }

    @Test
    void namesEveryFieldAtOnce() {
        ObjectNode request = changed("/runs/0/stop", "{\"value\": 1, \"unit\": \"[psi]\"}");
        request.remove("intake");
        request.put("extra", 1);
        ((ObjectNode) request.at("/runs/2")).remove("elapsed");

        var answer = caller.evaluate(request, "?units=METRIC");

        assertThat(answer.fields())
                .containsExactlyInAnyOrder("units", "intake", "extra", "runs[0].stop", "runs[2].elapsed");
    }

    @Test
    void keepsItsAnswerShort() {
        ObjectNode request = Caller.example();
        IntStream.range(0, 5_000).forEach(i -> request.put("extra" + i, i));
        request.put("x".repeat(9_000), 1);

        var answer = caller.evaluate(request);

        assertThat(answer.fields()).hasSize(100);
        assertThat(answer.body().length()).isLessThan(20_000);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "{",
                "{]",
                "nothing",
                "{\"runs\": NaN}",
                "{\"runs\": Infinity}",
                "{\"runs\": 01}",
                "{} {}",
                "{\"runs\": [], \"runs\": []}",
                "<readings/>",
                "volumeParts=1&runs=2",
                "\u0000"
            })
    void refusesWhatIsNoJson(String body) {
        var answer = caller.evaluate(body);

        assertThat(answer.status()).as(answer.body()).isEqualTo(400);
        assertThat(answer.contentType()).isEqualTo("application/problem+json");
        assertThat(answer.body()).doesNotContain("Exception", "jackson");
    }

    @ParameterizedTest
    @ValueSource(strings = {"null", "[]", "7", "\"text\"", "true", "{}"})
    void refusesJsonThatIsNoRequest(String body) {
        assertThat(caller.evaluate(body).status()).isEqualTo(422);
    }

    @Test
    void refusesBodiesTooDeepOrTooLarge() {
        String deep = "[".repeat(100_000) + "]".repeat(100_000);
        String digits = "{\"runs\": " + "9".repeat(50_000) + "}";

        assertThat(caller.evaluate(deep).status()).isEqualTo(400);
        assertThat(caller.evaluate(digits).status()).isEqualTo(400);
        assertThat(caller.evaluate("{\"notes\": \"" + "x".repeat(300_000) + "\"}")
                        .status())
                .isEqualTo(413);
        assertThat(tenMegabytes().status()).isEqualTo(413);
    }

    private Caller.Answer tenMegabytes() {
        return caller.send(caller.request(EvaluateController.PATH)
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofByteArray(new byte[10_000_000]))
                .build());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"text/plain", "text/json", "application/x-www-form-urlencoded", "application/xml", "json", "*/*"
            })
    void takesJsonOnly(String contentType) {
        var answer = caller.post("", contentType, Caller.example().toString().getBytes(StandardCharsets.UTF_8));

        assertThat(answer.status()).as(answer.body()).isEqualTo(415);
        assertThat(answer.contentType()).isEqualTo("application/problem+json");
    }

    @ParameterizedTest
    @ValueSource(strings = {"GET", "PUT", "DELETE", "PATCH"})
    void takesPostOnly(String method) {
        var answer = caller.send(caller.request(EvaluateController.PATH)
                .method(method, BodyPublishers.ofString("{}"))
                .header("Content-Type", "application/json")
                .build());

        assertThat(answer.status()).isEqualTo(405);
        assertThat(answer.contentType()).isEqualTo("application/problem+json");
    }

    @Test
    void refusesAnotherSite() {
        byte[] body = Caller.example().toString().getBytes(StandardCharsets.UTF_8);

        assertThat(caller.post("", "application/json", body, "Origin", "http://evil.example")
                        .status())
                .isEqualTo(403);
        assertThat(caller.post("", "application/json", body, "Sec-Fetch-Site", "cross-site")
                        .status())
                .isEqualTo(403);
        assertThat(caller.post("", "application/json", body).status()).isEqualTo(200);
    }

    /** Every place of the example in turn replaced by rubbish, and some hundred pairs of places. */
    @Test
    void isNeverAFailureOfOurs() {
        List<String> places = new ArrayList<>();
        collect(Caller.example(), "", places);
        var random = new Random(3);

        for (int i = 0; i < 900; i++) {
            ObjectNode request = changed(places.get(i % places.size()), RUBBISH[random.nextInt(RUBBISH.length)]);
            String second = places.get(random.nextInt(places.size()));
            if (i % 3 == 0 && !request.at(second).isMissingNode()) {
                replace(request, second, RUBBISH[random.nextInt(RUBBISH.length)]);
            }
            String sent = request.toString();
            var answer = caller.evaluate(sent);
            assertThat(answer.status()).as(sent + "\n" + answer.body()).isIn(200, 422);
            assertThat(answer.contentType()).contains("json");
        }
    }

    /** Readings at the edge of what is possible, alone and together, give a result or a clear answer. */
    @Test
    void survivesReadingsAtTheEdgeOfThePossible() {
        var random = new Random(11);
        List<String> pressures = List.of("-0.05", "0", "0.000000001", "7", "7.000000000000001", "99.99", "100");
        List<String> temperatures = List.of("-40", "-39.9", "0", "20", "59", "119");
        for (int i = 0; i < 400; i++) {
            ObjectNode request = Caller.example();
            set(request, "/barometer", pick(random, List.of("0.5", "1", "1.1")), "bar");
            set(request, "/intake/temperature", pick(random, temperatures.subList(0, 5)), "Cel");
            set(request, "/volumeParts/0/volume", pick(random, List.of("1e-9", "300", "999999999")), "L");
            for (int run = 0; run < 3; run++) {
                String path = "/runs/" + run + "/";
                set(request, path + "start", pick(random, pressures), "bar");
                set(request, path + "stop", pick(random, pressures), "bar");
                set(request, path + "elapsed", pick(random, List.of("0.5", "60", "86400")), "s");
                set(request, path + "startAirTemperature", pick(random, temperatures), "Cel");
                set(request, path + "stopAirTemperature", pick(random, temperatures), "Cel");
            }
            var answer = caller.evaluate(request);
            assertThat(answer.status()).as(request + "\n" + answer.body()).isIn(200, 422);
            assertThat(answer.body()).doesNotContain("NaN", "Infinity");
        }
    }

    private static String pick(Random random, List<String> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    private static void set(ObjectNode request, String where, String number, String unit) {
        replace(request, where, "{\"value\": " + number + ", \"unit\": \"" + unit + "\"}");
    }

    private static ObjectNode changed(String where, String json) {
        ObjectNode request = Caller.example();
        replace(request, where, json);
        return request;
    }

    private static void replace(ObjectNode request, String where, String json) {
        int cut = where.lastIndexOf('/');
        JsonNode parent = request.at(where.substring(0, cut));
        String name = where.substring(cut + 1);
        JsonNode value = Caller.JSON.readTree(json);
        if (parent instanceof ArrayNode list) {
            list.set(Integer.parseInt(name), value);
        } else {
            ((ObjectNode) parent).set(name, value);
        }
    }

    private static void collect(JsonNode node, String path, List<String> places) {
        if (node.isObject()) {
            node.propertyNames().forEach(name -> collect(node.get(name), path + "/" + name, places));
        }
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            collect(node.get(i), path + "/" + i, places);
        }
        if (!path.isEmpty()) {
            places.add(path);
        }
    }
}
