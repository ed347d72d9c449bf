/**
 * The calculation for other programs, without a record: JSON in, JSON out (docs/api.md). The numbers come from the code
 * that the pages use.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"quantity", "pumpup", "testrecord", "web"})
package plantair.api;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
