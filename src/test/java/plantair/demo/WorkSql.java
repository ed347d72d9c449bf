package plantair.demo;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import plantair.demo.Works.Baseline;
import plantair.register.ChangeKind;

/** Work on the machines and the chosen baseline as SQL. */
final class WorkSql {

    private final Script script;

    WorkSql(Script script) {
        this.script = script;
    }

    void add(List<DemoTest> tests) {
        Works.ALL.forEach(this::work);
        baseline(Works.BASELINE, tests);
    }

    private void work(Works.Work work) {
        script.add(new Insert("maintenance_event")
                .set("submission", work.submission())
                .setSql("compressor_id", Script.id("compressor", work.tag()))
                .set("happened_on", work.day())
                .set("kind", work.kind())
                .set("may_step", work.kind().mayChangeOutput())
                .set("done_by", work.by())
                .set("note", work.note())
                .set("withdrawn", false)
                .set("recorded_at", work.recordedAt())
                .set("recorded_by", ChangeBook.KEEPER));
    }

    private void baseline(Baseline baseline, List<DemoTest> tests) {
        DemoTest chosen = chosen(baseline, tests);
        script.add(new Insert("baseline_choice")
                .set("submission", submission(baseline))
                .setSql("compressor_id", Script.id("compressor", baseline.tag()))
                .setSql("test_id", Script.testId(chosen.draft().submission()))
                .setSql("event_id", Script.eventId(baseline.work().submission()))
                .set("reason", baseline.reason())
                .set("chosen_at", baseline.chosenAt())
                .set("chosen_by", ChangeBook.KEEPER));
    }

    private static UUID submission(Baseline baseline) {
        return UUID.nameUUIDFromBytes(baseline.tag().getBytes(StandardCharsets.UTF_8));
    }

    /** The choice in the change log. */
    static Insert change(Baseline baseline, List<DemoTest> tests) {
        return new Insert("change_record")
                .set("changed_at", baseline.chosenAt())
                .set("changed_by", ChangeBook.KEEPER)
                .set("kind", ChangeKind.BASELINE)
                .setSql(
                        "object_id",
                        "(select id from baseline_choice where submission = '" + submission(baseline) + "')")
                .set("object_name", baseline.tag())
                .setSql("before_text", line(of(baseline.tag(), tests).get(0)))
                .setSql("after_text", line(chosen(baseline, tests)))
                .set("reason", baseline.reason());
    }

    private static List<DemoTest> of(String tag, List<DemoTest> tests) {
        return tests.stream()
                .filter(test -> test.draft().compressor().tag().equals(tag))
                .toList();
    }

    private static DemoTest chosen(Baseline baseline, List<DemoTest> tests) {
        return of(baseline.tag(), tests).stream()
                .filter(test -> Script.day(test).equals(baseline.testedOn()))
                .findFirst()
                .orElseThrow();
    }

    private static String line(DemoTest test) {
        return "'test ' || " + Script.testId(test.draft().submission()) + " || ' of " + Script.day(test) + "'";
    }
}
