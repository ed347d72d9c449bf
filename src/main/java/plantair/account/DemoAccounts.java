package plantair.account;

import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/** Four invented people of the demo plant, one of each role, with one password for a start of the program. */
@Component
final class DemoAccounts {

    private static final Logger LOG = LoggerFactory.getLogger(DemoAccounts.class);
    private static final String BY = "demo";

    private static final List<AccountFacts> PEOPLE = List.of(
            new AccountFacts("demo-administrator", "Odalys Brandt (invented)", Role.ADMINISTRATOR, true),
            new AccountFacts("demo-manager", "Teodor Lindqvist (invented)", Role.MANAGER, true),
            new AccountFacts("demo-technician", "Marisol Achterberg (invented)", Role.TECHNICIAN, true),
            new AccountFacts("demo-auditor", "Kwabena Oyelaran (invented)", Role.AUDITOR, true));

    private final Accounts accounts;
    private final AccountBook book;
    private final boolean isDemo;
    private final String given;

    DemoAccounts(
            Accounts accounts,
            AccountBook book,
            @Value("${plantair.demo:false}") boolean isDemo,
            @Value("${plantair.demo-password:}") String given) {
        this.accounts = accounts;
        this.book = book;
        this.isDemo = isDemo;
        this.given = given;
    }

    /** Opens them with this start's password; nothing where there are accounts of real people. */
    boolean open() {
        long known = PEOPLE.stream().map(this::find).filter(Optional::isPresent).count();
        if (!isDemo || accounts.count() > known) {
            return false;
        }
        String password = given.isBlank() ? OneTimePassword.make() : given;
        for (AccountFacts person : PEOPLE) {
            var account = find(person);
            if (account.isPresent()) {
                book.choose(account.get().id(), password, BY);
            } else {
                book.open(person, password, false, "demo", BY);
            }
        }
        LOG.warn(
                "Demo accounts: {}; password of this start: {}",
                PEOPLE.stream().map(AccountFacts::username).toList(),
                given.isBlank() ? password : "as set");
        return true;
    }

    private Optional<Account> find(AccountFacts person) {
        return accounts.findByFactsUsername(person.username());
    }
}
