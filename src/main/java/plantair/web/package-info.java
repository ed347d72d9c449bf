/**
 * Furniture that every page shares: form fields and their checks, choice lists, units preference, text of quantities,
 * list pages, error pages. Knows no feature.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"quantity"})
package plantair.web;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
