package plantair.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.ParameterizedType;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import plantair.quantity.DurationUnit;
import plantair.quantity.PressureUnit;
import plantair.quantity.Unit;
import plantair.testing.OnH2;
import tools.jackson.databind.JsonNode;

/** The description that the application serves of itself. */
@OnH2
final class OpenApiTests {

    @LocalServerPort
    private int port;

    private Caller caller;
    private JsonNode description;

    @BeforeEach
    void fetch() {
        caller = new Caller(port);
        description =
                caller.send(caller.request("/api/v1/openapi.json").build()).json();
    }

    @Test
    void describesTheOneAddress() {
        assertThat(description.get("openapi").stringValue()).startsWith("3.");
        assertThat(description.get("paths").propertyNames()).containsExactly(EvaluateController.PATH);
        assertThat(address().propertyNames()).containsExactly("post");
        assertThat(post().get("responses").propertyNames()).contains("200", "422");
        assertThat(post().at("/parameters/0/name").stringValue()).isEqualTo("units");
        assertThat(texts(resolve(post().at("/parameters/0/schema")).get("enum")))
                .contains("US", "BAR_LITRE");
    }

    @Test
    void worksOutItsOwnExample() {
        JsonNode request = post().at("/requestBody/content/application~1json/example");
        JsonNode answer = post().at("/responses/200/content/application~1json/example");

        assertThat(request.isObject()).isTrue();
        assertThat(caller.evaluate(request).json()).isEqualTo(answer);
    }

    /** Every field of the records that are read stands in the description, and nothing else. */
    @Test
    void describesWhatIsRead() {
        compare(EvaluateRequest.class, resolve(post().at("/requestBody/content/application~1json/schema")));
    }

    private void compare(Class<?> type, JsonNode schema) {
        List<String> names = Stream.of(type.getRecordComponents())
                .map(component -> component.getName().replace("waited", "wait"))
                .toList();
        assertThat(schema.get("properties").propertyNames())
                .as(type.getName())
                .containsExactlyInAnyOrderElementsOf(names);
        for (var component : type.getRecordComponents()) {
            JsonNode property = schema.get("properties").get(component.getName().replace("waited", "wait"));
            Class<?> inner = component.getGenericType() instanceof ParameterizedType list
                    ? (Class<?>) list.getActualTypeArguments()[0]
                    : component.getType();
            if (inner.isRecord() && QuantityType.of(inner).isEmpty()) {
                compare(inner, resolve(property.has("items") ? property.get("items") : property));
            }
        }
    }

    @Test
    void namesTheUnitsOfEachReading() {
        JsonNode run = description.at("/components/schemas/Run");

        assertThat(texts(run.at("/properties/start/properties/unit/enum"))).isEqualTo(codes(PressureUnit.values()));
        assertThat(texts(run.at("/properties/elapsed/properties/unit/enum")))
                .isEqualTo(codes(DurationUnit.SECOND, DurationUnit.MINUTE));
        assertThat(texts(run.get("required"))).containsExactlyInAnyOrder("start", "stop", "elapsed");
    }

    private JsonNode address() {
        return description.get("paths").get(EvaluateController.PATH);
    }

    private JsonNode post() {
        return address().get("post");
    }

    private JsonNode resolve(JsonNode schema) {
        return schema.has("$ref")
                ? description.at(schema.get("$ref").stringValue().substring(1))
                : schema;
    }

    private static List<String> texts(JsonNode list) {
        return list.valueStream().map(JsonNode::stringValue).toList();
    }

    private static List<String> codes(Unit... units) {
        return Stream.of(units).map(Unit::code).toList();
    }
}
