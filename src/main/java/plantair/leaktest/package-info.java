/** Leak tests of a site as they were recorded, and the list of leaks that were found, with what became of each. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "quantity",
            "pumpup",
            "leak",
            "supply",
            "site",
            "equipment",
            "testrecord",
            "testrecord :: form",
            "register",
            "attachment",
            "web"
        })
package plantair.leaktest;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
