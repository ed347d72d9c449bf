/** What the receivers of a site can carry, and how often its compressors switch. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "quantity",
            "pumpup",
            "supply",
            "site",
            "equipment",
            "vessel",
            "testrecord",
            "leaktest",
            "demand",
            "web"
        })
package plantair.storage;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
