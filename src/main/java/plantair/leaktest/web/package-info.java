/** Pages of leak tests and of found leaks. */
@NullMarked
package plantair.leaktest.web;

import org.jspecify.annotations.NullMarked;
