/** The page of the backups. */
@NullMarked
package plantair.backup.web;

import org.jspecify.annotations.NullMarked;
