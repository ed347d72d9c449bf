/** What a machine has delivered over the years: plant overview and compressor page. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "instances",
            "quantity",
            "pumpup",
            "trend",
            "site",
            "equipment",
            "maintenance",
            "due",
            "instrument",
            "testrecord",
            "register",
            "paper",
            "web"
        })
package plantair.history;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
