package plantair.account.web;

import java.util.Optional;
import plantair.account.Account;
import plantair.account.AccountFacts;
import plantair.account.Role;
import plantair.register.EditForm;
import plantair.register.Submission;

/** What an administrator types about an account. */
final class AccountForm {

    private String username = "";
    private String displayName = "";
    private String role = "";
    private String enabled = "";
    private String confirmed = "";
    private EditForm edit = new EditForm();

    static AccountForm from(Account account) {
        var facts = account.facts();
        var form = new AccountForm();
        form.username = facts.username();
        form.displayName = facts.displayName();
        form.role = facts.role().name();
        form.enabled = String.valueOf(facts.enabled());
        form.edit = EditForm.of(account);
        return form;
    }

    /** Of a new account. */
    Optional<AccountFacts> read(Submission sent) {
        var name = AccountReader.username(username, sent.errors());
        return name.flatMap(known -> facts(sent, known, true)).or(() -> {
            facts(sent, "", true);
            return Optional.empty();
        });
    }

    /** Of an account that keeps its name. */
    Optional<AccountFacts> read(Submission sent, Account account) {
        return facts(sent, account.facts().username(), enabled.equals("true"));
    }

    private Optional<AccountFacts> facts(Submission sent, String name, boolean isEnabled) {
        var person = AccountReader.displayName(displayName, sent.errors());
        var chosen = sent.checks().choice("role", role, Role.class);
        return person.isPresent() && chosen.isPresent()
                ? Optional.of(new AccountFacts(name, person.get(), chosen.get(), isEnabled))
                : Optional.empty();
    }

    public String getUsername() {
        return username;
    }

    public void setUsername(String username) {
        this.username = username;
    }

    public String getDisplayName() {
        return displayName;
    }

    public void setDisplayName(String displayName) {
        this.displayName = displayName;
    }

    public String getRole() {
        return role;
    }

    public void setRole(String role) {
        this.role = role;
    }

    public String getEnabled() {
        return enabled;
    }

    public void setEnabled(String enabled) {
        this.enabled = enabled;
    }

    public String getConfirmed() {
        return confirmed;
    }

    public void setConfirmed(String confirmed) {
        this.confirmed = confirmed;
    }

    public EditForm getEdit() {
        return edit;
    }
}
