/** Pages of accounts: sign-in, first account, own account, list. */
@NullMarked
package plantair.account.web;

import org.jspecify.annotations.NullMarked;
