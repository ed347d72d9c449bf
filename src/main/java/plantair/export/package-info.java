/** Everything out as CSV. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "quantity",
            "pumpup",
            "trend",
            "site",
            "equipment",
            "instrument",
            "maintenance",
            "due",
            "vessel",
            "leaktest",
            "demand",
            "supply",
            "register",
            "attachment",
            "testrecord",
            "runlog",
            "paper",
            "guided",
            "web"
        })
package plantair.export;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
