package plantair.demand;

import java.util.Optional;
import plantair.register.Records;

/** The choices that sites have made. */
interface SupplyChoiceRecords extends Records<SupplyChoice> {

    Optional<SupplyChoice> findBySiteId(long siteId);
}
