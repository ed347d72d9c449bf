package plantair.testrecord;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.maintenance.MaintenanceEvent;
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

    /** The same of some compressors, by their ids. */
    public Map<Long, MachineHistory> of(Collection<Long> compressorIds) {
        var lines = results.currentLinesOfAll(compressorIds).stream()
                .collect(Collectors.groupingBy(ResultLine::compressorId));
        var done = events.findCurrentOfAll(compressorIds).stream()
                .collect(Collectors.groupingBy(
                        MaintenanceEvent::compressorId, Collectors.mapping(MachineEvent::of, Collectors.toList())));
        var chosen = baselines.findByCompressorIdInOrderById(compressorIds).stream()
                .collect(Collectors.groupingBy(
                        BaselineChoice::compressorId, Collectors.mapping(BaselineChoice::testId, Collectors.toList())));
        return compressorIds.stream()
                .collect(Collectors.toMap(
                        Function.identity(),
                        id -> new MachineHistory(
                                lines.getOrDefault(id, List.of()),
                                done.getOrDefault(id, List.of()),
                                chosen.getOrDefault(id, List.of()))));
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
