/** Pages of the guided test. */
@NullMarked
package plantair.guided.web;

import org.jspecify.annotations.NullMarked;
