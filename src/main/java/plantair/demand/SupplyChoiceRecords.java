package plantair.demand;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import plantair.register.Records;

/** The choices that sites have made. */
interface SupplyChoiceRecords extends Records<SupplyChoice> {

    Optional<SupplyChoice> findBySiteId(long siteId);

    List<SupplyChoice> findBySiteIdIn(Collection<Long> siteIds);
}
