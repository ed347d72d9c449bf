/**
 * Physical quantities in SI, the units a reader sees on a gauge or a plate, and the text of numbers. Pure: no Spring, no
 * database, no clock, no locale.
 */
@NullMarked
package plantair.quantity;

import org.jspecify.annotations.NullMarked;
