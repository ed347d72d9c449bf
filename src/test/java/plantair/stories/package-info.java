/** Stories of an invented plant, told through the forms and pages with the figures that its people would work out. */
@NullMarked
package plantair.stories;

import org.jspecify.annotations.NullMarked;
