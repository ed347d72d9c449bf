/** The page of storage. */
@NullMarked
package plantair.storage.web;

import org.jspecify.annotations.NullMarked;
