/** Sites: where the machines stand, with their air pressure and time zone. */
@NullMarked
@ApplicationModule(allowedDependencies = {"quantity", "pumpup", "register", "web"})
package plantair.site;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
