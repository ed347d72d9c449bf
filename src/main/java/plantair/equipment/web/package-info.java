/** Pages of the registers. */
@NullMarked
package plantair.equipment.web;

import org.jspecify.annotations.NullMarked;
