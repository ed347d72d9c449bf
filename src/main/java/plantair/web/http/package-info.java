/** What happens to every request and answer: filters, parameters from cookies, page attributes, error pages. */
@NullMarked
package plantair.web.http;

import org.jspecify.annotations.NullMarked;
