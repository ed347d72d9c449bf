/** The page of the cost of air. */
@NullMarked
package plantair.cost.web;

import org.jspecify.annotations.NullMarked;
