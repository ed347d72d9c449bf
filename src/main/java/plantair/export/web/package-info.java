/** The export page and its downloads. */
@NullMarked
package plantair.export.web;

import org.jspecify.annotations.NullMarked;
