/** The pages of photos and papers. */
@NullMarked
package plantair.attachment.web;

import org.jspecify.annotations.NullMarked;
