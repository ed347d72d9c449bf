/** Delivered flow over time: equations T1 to T13 of docs/trend.md. Pure. */
@NullMarked
package plantair.trend;

import org.jspecify.annotations.NullMarked;
