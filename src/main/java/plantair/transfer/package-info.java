/** Takes in records written elsewhere: test logs as CSV, and the zip of everything of another installation. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "instances",
            "quantity",
            "pumpup",
            "site",
            "equipment",
            "instrument",
            "register",
            "attachment",
            "testrecord",
            "runlog",
            "export",
            "web"
        })
package plantair.transfer;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
