package plantair.due;

import java.util.List;
import java.util.Optional;
import plantair.register.Records;

/** The intervals that sites have set. */
interface DueIntervals extends Records<DueInterval> {

    List<DueInterval> findBySiteId(long siteId);

    Optional<DueInterval> findBySiteIdAndKind(long siteId, DueKind kind);
}
