package plantair.testrecord;

import java.util.List;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads what is known of a compressor over time. */
@Service
@Transactional(readOnly = true)
public class Histories {

    private final StoredResults results;
    private final BaselineChoices baselines;

    Histories(StoredResults results, BaselineChoices baselines) {
        this.results = results;
        this.baselines = baselines;
    }

    /** The current tests of a compressor beside its baselines and events. */
    public MachineHistory of(long compressorId) {
        return new MachineHistory(
                results.currentLinesOf(compressorId),
                List.of(),
                baselines.findByCompressorIdOrderById(compressorId).stream()
                        .map(BaselineChoice::testId)
                        .toList());
    }
}
