package plantair.testrecord;

import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.maintenance.MaintenanceEvents;

/** Reads what is known of a compressor over time. */
@Service
@Transactional(readOnly = true)
public class Histories {

    private final StoredResults results;
    private final BaselineChoices baselines;
    private final MaintenanceEvents events;

    Histories(StoredResults results, BaselineChoices baselines, MaintenanceEvents events) {
        this.results = results;
        this.baselines = baselines;
        this.events = events;
    }

    /** The current tests of a compressor beside its baselines and events. */
    public MachineHistory of(long compressorId) {
        return new MachineHistory(
                results.currentLinesOf(compressorId),
                events.findCurrent(compressorId).stream().map(MachineEvent::of).toList(),
                baselines.findByCompressorIdOrderById(compressorId).stream()
                        .map(BaselineChoice::testId)
                        .toList());
    }
}
