package plantair.account.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import plantair.account.AccountBook;
import plantair.account.AccountFacts;
import plantair.account.Accounts;
import plantair.account.PasswordRules;
import plantair.account.Role;
import plantair.account.SetUpCode;
import plantair.web.NoSuchRecord;

/** Lets in the first administrator; not there any more once there is an account. */
@Controller
final class SetUpController {

    private static final String PAGE = "accounts/setup";

    private final Accounts accounts;
    private final AccountBook book;
    private final PasswordRules rules;
    private final SetUpCode code;

    SetUpController(Accounts accounts, AccountBook book, PasswordRules rules, SetUpCode code) {
        this.accounts = accounts;
        this.book = book;
        this.rules = rules;
        this.code = code;
    }

    @GetMapping("/setup")
    String show(@ModelAttribute("form") SetUpForm form) {
        refuseLater();
        return PAGE;
    }

    /** The code is looked at last, so that a slip elsewhere costs no delay. */
    @PostMapping("/setup")
    String open(@ModelAttribute("form") SetUpForm form, BindingResult errors, HttpServletResponse response) {
        refuseLater();
        Optional<String> username = AccountReader.username(form.getUsername(), errors);
        Optional<String> name = AccountReader.displayName(form.getDisplayName(), errors);
        var who = new NewPassword.Person(username.orElse(""), name.orElse(""));
        NewPassword.check(rules, form.getPassword(), form.getAgain(), who, errors);
        if (!errors.hasErrors() && !code.matches(form.getCode())) {
            errors.rejectValue("code", "setup.code.wrong");
        }
        if (errors.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return PAGE;
        }
        var facts = new AccountFacts(who.username(), who.displayName(), Role.ADMINISTRATOR, true);
        book.open(facts, form.getPassword(), false, "first account, by the code on the console", who.displayName());
        code.forget();
        return "redirect:/login?ready";
    }

    private void refuseLater() {
        if (accounts.count() > 0) {
            throw new NoSuchRecord("set-up is over");
        }
    }
}
