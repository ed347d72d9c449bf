/** Pages of the instruments and their calibrations. */
@NullMarked
package plantair.instrument.web;

import org.jspecify.annotations.NullMarked;
