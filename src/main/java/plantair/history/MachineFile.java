package plantair.history;

import java.util.Map;
import org.springframework.data.domain.Page;
import plantair.pumpup.PumpUpResult;
import plantair.testrecord.PumpUpTest;

/**
 * All that is known of one machine.
 *
 * @param machine the machine with its current tests
 * @param results the whole result of each current test, by test id
 * @param records one page of all tests ever recorded, newest first
 * @param corrections the test that took the place of another, by the id of that other
 */
public record MachineFile(
        Machine machine, Map<Long, PumpUpResult> results, Page<PumpUpTest> records, Map<Long, PumpUpTest> corrections) {

    public MachineFile {
        results = Map.copyOf(results);
        corrections = Map.copyOf(corrections);
    }
}
