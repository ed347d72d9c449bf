package plantair.account.web;

import java.util.List;
import java.util.Optional;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import plantair.account.Account;
import plantair.account.AccountBook;
import plantair.account.AccountFacts;
import plantair.account.Accounts;
import plantair.account.LastAdministrator;
import plantair.account.Role;
import plantair.register.Register;
import plantair.register.Submission;
import plantair.web.Choice;
import plantair.web.Choices;
import plantair.web.NoSuchRecord;
import plantair.web.Paging;
import plantair.web.Person;

/** List and form of the accounts. A one-time password is shown in the answer itself and kept nowhere. */
@Controller
final class AccountController {

    private static final String FORM = "accounts/form";
    private static final String ADDRESS = "/accounts";
    private static final int ROWS = 50;

    private final Accounts accounts;
    private final AccountBook book;
    private final Register<AccountFacts, Account> register;
    private final Choices choices;

    AccountController(Accounts accounts, AccountBook book, Register<AccountFacts, Account> register, Choices choices) {
        this.accounts = accounts;
        this.book = book;
        this.register = register;
        this.choices = choices;
    }

    @ModelAttribute("roles")
    List<Choice> roles() {
        return choices.of("role", Role.class);
    }

    @GetMapping("/accounts")
    String list(@RequestParam(defaultValue = "1") int page, Model model) {
        var paging = new Paging(ADDRESS, page, ROWS, accounts.count());
        var rows = accounts.findAllByOrderByFactsUsername(PageRequest.of(paging.index(), ROWS));
        model.addAttribute("paging", paging);
        model.addAttribute("accounts", rows.map(AccountView::of).getContent());
        return "accounts/list";
    }

    @GetMapping("/accounts/new")
    ModelAndView blank() {
        return new ModelAndView(FORM, "form", new AccountForm());
    }

    @PostMapping("/accounts")
    ModelAndView add(@ModelAttribute("form") AccountForm form, BindingResult errors, Person person) {
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<AccountFacts> facts = form.read(sent);
        if (facts.isPresent() && accounts.existsByFactsUsername(facts.get().username())) {
            sent.reject("username", "account.username.taken");
        }
        return sent.save("username", by -> book.open(facts.orElseThrow(), by.reason(), by.by()))
                .map(AccountController::once)
                .orElseGet(() -> sent.refused(FORM));
    }

    @GetMapping("/accounts/{id}/edit")
    ModelAndView edit(@PathVariable long id) {
        Account account = find(id);
        return changed(account, new ModelAndView(FORM, "form", AccountForm.from(account)));
    }

    @PostMapping("/accounts/{id}")
    ModelAndView change(
            @PathVariable long id,
            @ModelAttribute("form") AccountForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        Account account = find(id);
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<AccountFacts> facts = form.read(sent, account);
        sent.change(register, account, facts);
        try {
            var saved = sent.save(
                    "username", by -> book.revise(id, account.version(), facts.orElseThrow(), by.reason(), by.by()));
            if (saved.isPresent()) {
                return sent.accepted(ADDRESS, redirect);
            }
        } catch (LastAdministrator nobodyLeft) {
            sent.reject("role", "account.lastAdministrator");
        }
        return changed(account, sent.refused(FORM));
    }

    @PostMapping("/accounts/{id}/password")
    ModelAndView reset(@PathVariable long id, Person person) {
        return once(book.reset(id, "new one-time password", person.name()));
    }

    private static ModelAndView once(AccountBook.WithPassword made) {
        return new ModelAndView("accounts/password")
                .addObject("account", AccountView.of(made.account()))
                .addObject("password", made.password());
    }

    private static ModelAndView changed(Account account, ModelAndView page) {
        return page.addObject("changed", AccountView.of(account));
    }

    private Account find(long id) {
        return accounts.findById(id).orElseThrow(() -> new NoSuchRecord("account " + id));
    }
}
