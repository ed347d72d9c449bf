/** Delivered flow over time: equations T1 to T5 of docs/trend.md. Pure. */
@NullMarked
package plantair.trend;

import org.jspecify.annotations.NullMarked;
