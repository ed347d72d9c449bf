/** What tests share: the two databases, a fixed clock, the application as a process, and a browser. */
@NullMarked
package plantair.testing;

import org.jspecify.annotations.NullMarked;
