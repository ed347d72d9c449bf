/** What is due when, by the intervals that each site sets with the authority it names; a list, and a feed for calendars. */
@NullMarked
@ApplicationModule(allowedDependencies = {"site", "account", "register", "web"})
package plantair.due;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
