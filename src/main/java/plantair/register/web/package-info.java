/** The page of changes. */
@NullMarked
package plantair.register.web;

import org.jspecify.annotations.NullMarked;
