/** Registers: what the plant owns, every change of it written down with who, when and why, in rows only ever added. */
@NullMarked
@ApplicationModule(allowedDependencies = {"web"})
package plantair.register;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
