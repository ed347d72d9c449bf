package plantair.account;

import java.time.Clock;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.register.Changes;
import plantair.register.Register;
import plantair.web.NoSuchRecord;

/** Opens and changes accounts; each change and its record are one transaction. A password is never written down. */
@Service
public class AccountBook {

    private static final String ONE_TIME = "one-time, made for this person";
    private static final String CHOSEN = "chosen by this person";

    private final Accounts accounts;
    private final Register<AccountFacts, Account> register;
    private final Changes changes;
    private final PasswordEncoder passwords;
    private final Clock clock;

    AccountBook(
            Accounts accounts,
            Register<AccountFacts, Account> register,
            Changes changes,
            PasswordEncoder passwords,
            Clock clock) {
        this.accounts = accounts;
        this.register = register;
        this.changes = changes;
        this.passwords = passwords;
        this.clock = clock;
    }

    /**
     * An account and the password that opens it.
     *
     * @param account the account
     * @param password to be told to the person once; kept nowhere
     */
    public record WithPassword(Account account, String password) {}

    /** Opens an account with a one-time password. */
    @Transactional
    public WithPassword open(AccountFacts facts, String reason, String by) {
        String password = OneTimePassword.make();
        return new WithPassword(open(facts, password, true, reason, by), password);
    }

    /** Opens an account with a password that was chosen. */
    @Transactional
    public Account open(AccountFacts facts, String password, boolean mustChange, String reason, String by) {
        return register.add(new Account(facts, passwords.encode(password), mustChange), reason, by);
    }

    /**
     * Changes what is said of an account.
     *
     * @throws LastAdministrator when no administrator would be left
     */
    @Transactional
    public Account revise(long id, int version, AccountFacts facts, String reason, String by) {
        boolean stays = facts.role() == Role.ADMINISTRATOR && facts.enabled();
        var administrators = accounts.findByFactsRoleAndFactsEnabledTrueOrderById(Role.ADMINISTRATOR);
        if (!stays && administrators.size() == 1 && administrators.get(0).id() == id) {
            throw new LastAdministrator(facts.username());
        }
        return register.revise(id, version, facts, reason, by);
    }

    /** Gives an account a one-time password and ends its sessions. */
    @Transactional
    public WithPassword reset(long id, String reason, String by) {
        String password = OneTimePassword.make();
        return new WithPassword(renew(find(id), password, true, ONE_TIME, reason, by), password);
    }

    /** Takes the password that a person chose and ends the person's sessions. */
    @Transactional
    public Account choose(long id, String password, String by) {
        return renew(find(id), password, false, CHOSEN, "own password", by);
    }

    /** Ends all sessions of an account. */
    @Transactional
    public void endSessions(long id) {
        Account account = find(id);
        account.endSessions();
        accounts.saveAndFlush(account);
    }

    private Account renew(Account account, String password, boolean mustChange, String what, String reason, String by) {
        account.renewPassword(passwords.encode(password), mustChange);
        Account renewed = accounts.saveAndFlush(account);
        String facts = renewed.facts().lines();
        String after = facts + "\npassword: " + what;
        changes.save(new ChangeRecord(
                clock.instant(),
                by,
                ChangeKind.ACCOUNT,
                renewed.id(),
                renewed.facts().name(),
                facts,
                after,
                reason));
        return renewed;
    }

    private Account find(long id) {
        return accounts.findById(id).orElseThrow(() -> new NoSuchRecord("account " + id));
    }
}
