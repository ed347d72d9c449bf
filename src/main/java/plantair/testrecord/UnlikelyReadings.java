package plantair.testrecord;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.pumpup.Plausibility;
import plantair.pumpup.PumpUpReadings;
import plantair.pumpup.PumpUpResult;
import plantair.pumpup.UnlikelyReading;
import plantair.pumpup.Usual;

/** Compares a draft with what its machine showed before. */
@Service
public class UnlikelyReadings {

    private static final int TESTS_BACK = 8;

    private final StoredResults results;
    private final ResultProjection projection;

    UnlikelyReadings(StoredResults results, ResultProjection projection) {
        this.results = results;
        this.projection = projection;
    }

    /** What looks unlikely; a test that the draft is to correct does not count as history. */
    @Transactional(readOnly = true)
    public List<UnlikelyReading> in(TestDraft draft, Optional<Long> superseded) {
        PumpUpReadings readings = TestReadings.of(draft);
        List<PumpUpResult> earlier = results
                .findByCompressorIdAndCurrentRecordTrueOrderByPerformedAtDescKeyTestIdDesc(
                        draft.compressor().id(), Limit.of(TESTS_BACK))
                .stream()
                .filter(result -> !superseded.equals(Optional.of(result.testId())))
                .map(projection::result)
                .toList();
        return Plausibility.check(readings, Usual.of(earlier, readings.ratingPoints()));
    }
}
