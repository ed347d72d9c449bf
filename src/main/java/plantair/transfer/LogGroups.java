package plantair.transfer;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;

/** Puts rows that follow each other under one label together: the runs of a test. A row without a label is a test. */
final class LogGroups {

    private final Remarks problems;
    private final BiConsumer<String, List<Row>> tests;
    private final Set<String> seen = new HashSet<>();
    private final List<Row> rows = new ArrayList<>();
    private String label = "";

    LogGroups(Remarks problems, BiConsumer<String, List<Row>> tests) {
        this.problems = problems;
        this.tests = tests;
    }

    void add(Row row) {
        String named = row.cell("test").isBlank()
                ? row.cell("test_id").strip()
                : row.cell("test").strip();
        if (named.isEmpty() || !named.equals(label)) {
            end();
            if (!named.isEmpty() && !seen.add(named)) {
                problems.add(row.file(), row.line(), "test", "import.apart", named);
            }
        }
        label = named;
        rows.add(row);
    }

    void end() {
        if (!rows.isEmpty()) {
            tests.accept(label, List.copyOf(rows));
            rows.clear();
        }
    }
}
