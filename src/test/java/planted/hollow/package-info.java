/** A package that a rename has left empty. */
@NullMarked
package planted.hollow;

import org.jspecify.annotations.NullMarked;
