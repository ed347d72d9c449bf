/** Backup and restore of the H2 file, while people work, by hand and every day. PostgreSQL has its own tools. */
@NullMarked
package plantair.backup;

import org.jspecify.annotations.NullMarked;
