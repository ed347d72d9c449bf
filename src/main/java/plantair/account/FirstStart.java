package plantair.account;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.context.ApplicationContext;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.context.WebApplicationContext;
import plantair.instances.OneAtATime;

/**
 * Lets in the first administrator: by settings, or by a code on the console. There is no default password, for the demo
 * neither.
 */
@Component
@Order(0)
final class FirstStart implements ApplicationRunner {

    private static final Logger LOG = LoggerFactory.getLogger(FirstStart.class);
    private static final String BY = "first start";

    private final Accounts accounts;
    private final AccountBook book;
    private final PasswordRules rules;
    private final SetUpCode code;
    private final DemoAccounts demo;
    private final OneAtATime locks;
    private final ApplicationContext context;
    private final String name;
    private final String password;

    FirstStart(
            Accounts accounts,
            AccountBook book,
            PasswordRules rules,
            SetUpCode code,
            DemoAccounts demo,
            OneAtATime locks,
            ApplicationContext context,
            @Value("${plantair.first-admin-name:}") String name,
            @Value("${plantair.first-admin-password:}") String password) {
        this.accounts = accounts;
        this.book = book;
        this.rules = rules;
        this.code = code;
        this.demo = demo;
        this.locks = locks;
        this.context = context;
        this.name = name;
        this.password = password;
    }

    @Override
    public void run(ApplicationArguments arguments) {
        if (context instanceof WebApplicationContext) {
            locks.inTurn("first start", this::letIn);
        }
    }

    private void letIn() {
        if (demo.open() || accounts.count() > 0) {
            return;
        }
        if (name.isBlank() && password.isBlank()) {
            LOG.warn("There is no account yet. Open /setup and type this one-time code: {}", code.make());
        } else {
            openBySettings();
        }
    }

    private void openBySettings() {
        if (!Usernames.isSound(name)) {
            throw new IllegalStateException("plantair.first-admin-name: " + Usernames.RULE);
        }
        rules.problem(password, name, name).ifPresent(problem -> {
            throw new IllegalStateException("plantair.first-admin-password: " + problem
                    + "; at least 12 characters, at most 72 bytes, not easy to guess");
        });
        book.open(new AccountFacts(name, name, Role.ADMINISTRATOR, true), password, true, "set in the settings", BY);
        LOG.warn("Opened the account of the settings; its password must be changed at the first sign-in.");
    }
}
