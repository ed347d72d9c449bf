/** How fast the wall of a vessel thins at named places, and what that leaves: W1 to W4 of docs/vessels.md. Pure. */
@NullMarked
package plantair.wall;

import org.jspecify.annotations.NullMarked;
