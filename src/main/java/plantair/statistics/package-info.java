/** Straight lines and distributions. Pure; the only package that may use Hipparchus. */
@NullMarked
package plantair.statistics;

import org.jspecify.annotations.NullMarked;
