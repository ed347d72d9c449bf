/** The page that plans a test. */
@NullMarked
package plantair.planner.web;

import org.jspecify.annotations.NullMarked;
