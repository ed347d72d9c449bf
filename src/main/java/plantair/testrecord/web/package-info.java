/** Pages of the pump-up tests. */
@NullMarked
package plantair.testrecord.web;

import org.jspecify.annotations.NullMarked;
