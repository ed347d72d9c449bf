/** Several instances on one database: work that one of them does at a time, and files that wait for any of them. */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package plantair.instances;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
