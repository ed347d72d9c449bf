/** Offers of compressors for a site, put on one basis and pressure. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "quantity",
            "pumpup",
            "supply",
            "site",
            "equipment",
            "testrecord",
            "cost",
            "register",
            "web"
        })
package plantair.offer;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
