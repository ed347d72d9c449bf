package plantair.upgrade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The results that an archive holds, to the last digit: every column, and every part of the detail. */
final class StoredResults {

    static final String TABLE = "pump_up_result";

    private static final String DETAIL = "detail";
    private static final JsonMapper JSON = JsonMapper.builder().build();

    /**
     * The version history of PU-1 in docs/method.md: before the full budget, the leak, certificates and the verdict came, its
     * uncertainty was another one. Of results from then everything is compared but these: what is said of uncertainty, what
     * follows from it, and what there was not yet.
     */
    private static final int BEFORE_CERTIFICATES = 4;

    private static final Set<String> OF_THE_BUDGET = Set.of(
            "relative_random",
            "relative_shared",
            "relative_combined",
            "severity",
            "uncertainty",
            "verdict",
            "leak",
            "findings");

    private final Set<String> leftOut;
    private final Map<String, Map<String, Object>> expected;

    StoredResults(Archive archive, Snapshot then) {
        leftOut = archive.step() <= BEFORE_CERTIFICATES ? OF_THE_BUDGET : Set.of();
        expected = byTest(then);
        assertThat(expected).as("results in the archive").hasSizeGreaterThan(100);
    }

    void areIn(Snapshot now) {
        Map<String, Map<String, Object>> actual = byTest(now);
        assertThat(actual.keySet()).isEqualTo(expected.keySet());
        expected.forEach((test, then) -> {
            Map<String, Object> result = actual.get(test);
            result.put(DETAIL, known((JsonNode) result.get(DETAIL), (JsonNode) then.get(DETAIL)));
            assertThat(result).as(test).isEqualTo(then);
        });
    }

    /** What is said now of what was said then: parts that a later program added are left out, at any depth. */
    private static JsonNode known(JsonNode now, JsonNode then) {
        if (now.isObject() && then.isObject()) {
            ObjectNode known = JSON.createObjectNode();
            then.propertyNames().forEach(name -> known.set(name, known(now.path(name), then.path(name))));
            return known;
        }
        if (now.isArray() && then.size() == now.size()) {
            var known = JSON.createArrayNode();
            for (int index = 0; index < now.size(); index++) {
                known.add(known(now.get(index), then.get(index)));
            }
            return known;
        }
        return now;
    }

    private Map<String, Map<String, Object>> byTest(Snapshot snapshot) {
        return snapshot.rows(TABLE).stream()
                .collect(Collectors.toMap(
                        row -> "test " + row.get("test_id") + " by " + row.get("method_version"), this::compared));
    }

    private Map<String, Object> compared(Map<String, String> row) {
        Map<String, Object> values = new TreeMap<>(row);
        values.put(DETAIL, detail(row.get(DETAIL)));
        values.keySet().removeAll(leftOut);
        return values;
    }

    private JsonNode detail(String text) {
        var detail = (ObjectNode) JSON.readTree(text);
        detail.remove(leftOut);
        return detail;
    }
}
