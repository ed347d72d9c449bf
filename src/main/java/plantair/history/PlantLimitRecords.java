package plantair.history;

import plantair.register.Records;

/** The limits that sites have set, by id of the site. */
interface PlantLimitRecords extends Records<PlantLimits> {}
