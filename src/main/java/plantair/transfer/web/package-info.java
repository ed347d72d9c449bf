/** The import pages. */
@NullMarked
package plantair.transfer.web;

import org.jspecify.annotations.NullMarked;
