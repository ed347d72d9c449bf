/** What whoever runs the program watches: figures of its own beside those of the framework, and the command {@code health}. */
@NullMarked
@ApplicationModule(allowedDependencies = {"register", "history", "backup"})
package plantair.operation;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
