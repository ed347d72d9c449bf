/**
 * Safety records of receivers: relief valves and their tests, certificates, inspections, wall thickness, damage seen; and
 * what of all that forbids to pump one up.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"quantity", "wall", "site", "equipment", "due", "register", "web"})
package plantair.vessel;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
