package plantair.history;

import java.util.List;
import java.util.Map;
import org.springframework.data.domain.Page;
import plantair.maintenance.MaintenanceEvent;
import plantair.pumpup.PumpUpResult;
import plantair.testrecord.BaselineChoice;
import plantair.testrecord.PumpUpTest;
import plantair.trend.Limits;

/**
 * All that is known of one machine.
 *
 * @param machine the machine with its current tests
 * @param results the whole result of each current test that has more to tell than its line, by test id
 * @param records one page of all tests ever recorded, newest first
 * @param corrections the test that took the place of another, by the id of that other
 * @param events what was done to it and counts, oldest first
 * @param choices every baseline that was chosen, oldest first
 * @param limits parts of the baseline at which its site wants to act
 */
public record MachineFile(
        Machine machine,
        Map<Long, PumpUpResult> results,
        Page<PumpUpTest> records,
        Map<Long, PumpUpTest> corrections,
        List<MaintenanceEvent> events,
        List<BaselineChoice> choices,
        Limits limits) {

    public MachineFile {
        results = Map.copyOf(results);
        corrections = Map.copyOf(corrections);
        events = List.copyOf(events);
        choices = List.copyOf(choices);
    }
}
