/** Pages of supply and demand. */
@NullMarked
package plantair.demand.web;

import org.jspecify.annotations.NullMarked;
