/** What guards every request: sign-in, sessions, and the rules of who may do what. */
@NullMarked
package plantair.account.http;

import org.jspecify.annotations.NullMarked;
