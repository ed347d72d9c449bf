/** The pages of logged runs and of flow against pressure. */
@NullMarked
package plantair.runlog.web;

import org.jspecify.annotations.NullMarked;
