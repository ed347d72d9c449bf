/** Pages of the offers. */
@NullMarked
package plantair.offer.web;

import org.jspecify.annotations.NullMarked;
