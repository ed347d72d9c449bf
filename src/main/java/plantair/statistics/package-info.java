/** Straight lines, propagation of uncertainty and distributions. Pure; the only package that may use Hipparchus. */
@NullMarked
package plantair.statistics;

import org.jspecify.annotations.NullMarked;
