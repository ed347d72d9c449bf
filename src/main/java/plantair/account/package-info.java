/** Accounts: who may sign in, who may do what, and the record of sign-ins. */
@NullMarked
@ApplicationModule(allowedDependencies = {"instances", "register", "web"})
package plantair.account;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
