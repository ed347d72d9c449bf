/** What is printed: pages of templates as PDF, QR codes, and the address that they lead to. */
@NullMarked
@ApplicationModule(allowedDependencies = {"web"})
package plantair.paper;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
