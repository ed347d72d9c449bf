/** Plant Air Records. Direct sub-packages are the modules; DEVELOPERS.md has their map. */
@NullMarked
package plantair;

import org.jspecify.annotations.NullMarked;
