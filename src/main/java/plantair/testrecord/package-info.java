/** Pump-up tests as they were recorded, and the rebuildable projection of their results. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "instances",
            "quantity",
            "pumpup",
            "trend",
            "supply",
            "site",
            "equipment",
            "instrument",
            "maintenance",
            "register",
            "attachment",
            "paper",
            "web"
        })
package plantair.testrecord;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
