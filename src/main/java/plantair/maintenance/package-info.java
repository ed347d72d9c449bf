/** What was done to compressors and when; events are only ever added. */
@NullMarked
@ApplicationModule(allowedDependencies = {"quantity", "site", "equipment", "register", "web"})
package plantair.maintenance;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
