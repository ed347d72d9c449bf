package plantair.account.web;

import plantair.account.Account;

/**
 * One line of the list of accounts.
 *
 * @param id its id
 * @param username what is typed to sign in
 * @param displayName name of the person
 * @param role code of what the person may do
 * @param enabled whether the person may sign in
 */
record AccountView(long id, String username, String displayName, String role, boolean enabled) {

    static AccountView of(Account account) {
        var facts = account.facts();
        return new AccountView(
                account.id(),
                facts.username(),
                facts.displayName(),
                facts.role().name(),
                facts.enabled());
    }
}
