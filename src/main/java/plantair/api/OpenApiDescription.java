package plantair.api;

import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.media.NumberSchema;
import io.swagger.v3.oas.models.media.ObjectSchema;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.media.StringSchema;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import org.springdoc.core.customizers.OpenApiCustomizer;
import org.springdoc.core.utils.SpringDocUtils;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.io.ClassPathResource;
import plantair.web.UnitSet;
import tools.jackson.databind.json.JsonMapper;

/** What the OpenAPI description says beyond the types of the code. */
@Configuration(proxyBeanMethods = false)
class OpenApiDescription {

    private static final String JSON = "application/json";

    @Bean
    OpenAPI interfaceForPrograms() {
        QuantityType.ALL.forEach(
                quantity -> SpringDocUtils.getConfig().replaceWithSchema(quantity.type(), schema(quantity)));
        return new OpenAPI()
                .info(new Info()
                        .title("Plant Air Records")
                        .version("1")
                        .description("The calculation without a record. Units are UCUM codes."));
    }

    private static Schema<?> schema(QuantityType<?, ?> quantity) {
        var unit = new StringSchema();
        quantity.codes().forEach(unit::addEnumItem);
        var schema = new ObjectSchema();
        schema.addProperty("value", new NumberSchema());
        schema.addProperty("unit", unit);
        schema.setRequired(List.of("value", "unit"));
        return schema;
    }

    /** The example answer is worked out, so that it is never out of date. */
    @Bean
    OpenApiCustomizer examples(Evaluation evaluation, JsonMapper json) {
        return description -> {
            Operation evaluate =
                    description.getPaths().get(EvaluateController.PATH).getPost();
            byte[] request = exampleRequest();
            var answer = evaluation.evaluate(JsonBody.parse(request), UnitSet.US.name(), Locale.ENGLISH);
            evaluate.getRequestBody().getContent().get(JSON).setExample(json.readValue(request, Object.class));
            evaluate.getResponses()
                    .get("200")
                    .getContent()
                    .get(JSON)
                    .setExample(json.convertValue(answer.answer().orElseThrow(), Object.class));
        };
    }

    private static byte[] exampleRequest() {
        try {
            return new ClassPathResource("api/evaluate-request.json").getContentAsByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
