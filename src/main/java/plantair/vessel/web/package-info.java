/** Pages of a receiver and its safety records. */
@NullMarked
package plantair.vessel.web;

import org.jspecify.annotations.NullMarked;
