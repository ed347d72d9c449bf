/** The page of the check, and the download of the file. */
@NullMarked
package plantair.audit.web;

import org.jspecify.annotations.NullMarked;
