/** Records of earlier versions of the program, opened with that of today. */
@NullMarked
package plantair.upgrade;

import org.jspecify.annotations.NullMarked;
