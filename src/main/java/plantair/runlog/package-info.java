/** Runs as a data logger saw them, and the flow against pressure of tests with laps or a log. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "instances",
            "quantity",
            "pumpup",
            "site",
            "equipment",
            "instrument",
            "testrecord",
            "register",
            "attachment",
            "web"
        })
package plantair.runlog;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
