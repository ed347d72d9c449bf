/** Air lost while nobody uses any: load and unload times, fall of pressure. S4 to S8 of docs/supply.md. Pure. */
@NullMarked
package plantair.leak;

import org.jspecify.annotations.NullMarked;
