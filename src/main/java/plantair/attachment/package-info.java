/** Photos and papers of records: what may be attached, where the bytes lie, and that they are still the same. */
@NullMarked
@ApplicationModule(allowedDependencies = {"register", "web"})
package plantair.attachment;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
