/** Planning a test before it is made. */
@NullMarked
@ApplicationModule(allowedDependencies = {"quantity", "pumpup", "site", "equipment", "testrecord", "web"})
package plantair.planner;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
