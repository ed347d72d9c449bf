/** The pump-up test: equations M1 to M19 of docs/method.md, from readings to result. Pure. */
@NullMarked
package plantair.pumpup;

import org.jspecify.annotations.NullMarked;
