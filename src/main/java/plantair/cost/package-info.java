/** What the air of a site costs: leaks, lost output, air as such. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "quantity",
            "pumpup",
            "trend",
            "supply",
            "site",
            "equipment",
            "testrecord",
            "history",
            "leaktest",
            "web"
        })
package plantair.cost;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
