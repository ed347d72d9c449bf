/** Whether there is enough air, what storage does and what air costs: S9 to S21, S24 and S25 of docs/supply.md. Pure. */
@NullMarked
package plantair.supply;

import org.jspecify.annotations.NullMarked;
