/** Lines, least squares, ranks, propagation of uncertainty and distributions. Pure; only it may use Hipparchus. */
@NullMarked
package plantair.statistics;

import org.jspecify.annotations.NullMarked;
