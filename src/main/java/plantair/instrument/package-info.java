/** Register of instruments, and their calibrations, which are only ever added. */
@NullMarked
@ApplicationModule(allowedDependencies = {"quantity", "site", "register", "web"})
package plantair.instrument;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
