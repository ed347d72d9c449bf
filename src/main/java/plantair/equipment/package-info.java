/** Registers of compressors, receivers and pipe pieces. */
@NullMarked
@ApplicationModule(allowedDependencies = {"quantity", "site", "register", "paper", "web"})
package plantair.equipment;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
