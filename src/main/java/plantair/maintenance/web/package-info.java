/** Pages of the maintenance events. */
@NullMarked
package plantair.maintenance.web;

import org.jspecify.annotations.NullMarked;
