/** Whether the records are still as they were recorded: the check of the chain of changes, and the file to check it elsewhere. */
@NullMarked
@ApplicationModule(allowedDependencies = {"instances", "register", "attachment", "web"})
package plantair.audit;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
