package plantair.audit;

import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.testing.FixedClock;

/** Lines of the change log for tests. */
final class Lines {

    private Lines() {}

    static ChangeRecord about(ChangeKind kind, long id) {
        return about(kind, id, "a thing", null);
    }

    static ChangeRecord about(ChangeKind kind, long id, String text, String before) {
        return new ChangeRecord(FixedClock.NOW, "Ann", kind, id, text, before, text, text);
    }
}
