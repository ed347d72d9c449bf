package plantair.testrecord.web;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import plantair.maintenance.MaintenanceEvent;
import plantair.testrecord.MachineHistory;
import plantair.testrecord.ResultLine;

/**
 * What may be chosen as a baseline, and as the reason for it.
 *
 * @param tests those that join the trend, newest first
 * @param events work on the machine, newest first
 */
record BaselineOffer(List<ResultLine> tests, List<MaintenanceEvent> events) {

    /** A list that a person can look through; older tests are on the compressor's page. */
    private static final int MOST = 50;

    static BaselineOffer of(MachineHistory history, List<MaintenanceEvent> events) {
        return new BaselineOffer(
                newest(history.tests().stream().filter(MachineHistory::counts).toList()), newest(events));
    }

    private static <T> List<T> newest(List<T> oldestFirst) {
        List<T> newest = new ArrayList<>(oldestFirst);
        Collections.reverse(newest);
        return List.copyOf(newest.subList(0, Math.min(MOST, newest.size())));
    }

    Optional<ResultLine> test(long id) {
        return tests.stream().filter(test -> test.testId() == id).findFirst();
    }

    Optional<MaintenanceEvent> event(long id) {
        return events.stream().filter(event -> event.id() == id).findFirst();
    }
}
