/** The test guided at the machine: its quarterly readings, its drafts, and its pages that work without a signal. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "quantity",
            "pumpup",
            "site",
            "equipment",
            "instrument",
            "testrecord",
            "testrecord :: form",
            "register",
            "web"
        })
package plantair.guided;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
