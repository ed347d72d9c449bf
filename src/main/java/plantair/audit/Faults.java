package plantair.audit;

import java.util.ArrayList;
import java.util.List;
import plantair.audit.Fault.Code;

/** What a check under way has found: every fault is counted, the first are kept. */
final class Faults {

    private static final int MOST = 100;

    private final List<Fault> first = new ArrayList<>();
    private long count;

    void add(Code code, long line, String record) {
        count++;
        if (first.size() < MOST) {
            first.add(new Fault(code, line, record));
        }
    }

    List<Fault> first() {
        return first;
    }

    long count() {
        return count;
    }
}
