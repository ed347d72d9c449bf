/** Pages of the due list, of the intervals and of the calendar feed. */
@NullMarked
package plantair.due.web;

import org.jspecify.annotations.NullMarked;
