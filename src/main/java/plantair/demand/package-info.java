/** What takes air at a site, and whether there is enough: capacity less leaks against demand. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "quantity",
            "pumpup",
            "supply",
            "site",
            "equipment",
            "testrecord",
            "leaktest",
            "register",
            "web"
        })
package plantair.demand;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
