package plantair.demo;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import plantair.demo.ChangeBook.Change;
import plantair.register.ChangeKind;

/** The change log as SQL, in order of time. */
final class ChangeSql {

    private final Map<Instant, Insert> inOrder = new TreeMap<>();

    static void add(Script script, List<DemoTest> tests) {
        var log = new ChangeSql();
        ChangeBook.changes().forEach(log::change);
        Gauges.changes().forEach(log::change);
        tests.forEach(log::supersession);
        log.inOrder.put(Works.BASELINE.chosenAt(), WorkSql.change(Works.BASELINE, tests));
        log.inOrder.values().forEach(script::add);
    }

    private void change(Change change) {
        String table = change.kind() == ChangeKind.PIPE
                ? "pipe_piece"
                : change.kind().name().toLowerCase(Locale.ROOT);
        inOrder.put(
                change.at(),
                new Insert("change_record")
                        .set("changed_at", change.at())
                        .set("changed_by", change.by())
                        .set("kind", change.kind())
                        .setSql("object_id", Script.id(table, change.name()))
                        .set("object_name", change.name())
                        .set("before_text", change.before())
                        .set("after_text", change.after())
                        .set("reason", change.reason()));
    }

    private void supersession(DemoTest test) {
        if (test.correction() == null) {
            return;
        }
        String old = Script.testId(test.correction().supersedes());
        inOrder.put(
                test.recordedAt(),
                new Insert("change_record")
                        .set("changed_at", test.recordedAt())
                        .set("changed_by", test.draft().tester())
                        .set("kind", ChangeKind.TEST)
                        .setSql("object_id", old)
                        .setSql("object_name", "'test ' || " + old)
                        .setSql("before_text", "'test ' || " + old)
                        .setSql(
                                "after_text",
                                "'superseded by test ' || "
                                        + Script.testId(test.draft().submission()))
                        .set("reason", test.correction().reason()));
    }
}
