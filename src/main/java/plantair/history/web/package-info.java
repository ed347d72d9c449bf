/** Plant overview and compressor page. */
@NullMarked
package plantair.history.web;

import org.jspecify.annotations.NullMarked;
