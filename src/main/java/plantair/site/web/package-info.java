/** Pages of the sites. */
@NullMarked
package plantair.site.web;

import org.jspecify.annotations.NullMarked;
