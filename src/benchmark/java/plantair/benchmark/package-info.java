/** How long the method takes. Compiled and run by the Maven profile {@code benchmark} only. */
@NullMarked
package plantair.benchmark;

import org.jspecify.annotations.NullMarked;
