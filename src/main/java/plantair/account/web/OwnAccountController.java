package plantair.account.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import plantair.account.AccountBook;
import plantair.account.AccountEvent.Kind;
import plantair.account.PasswordRules;
import plantair.account.SignIn;
import plantair.account.SignedIn;
import plantair.web.Person;

/** The own account: another password, and the end of all sessions. Both lead to the page to sign in. */
@Controller
final class OwnAccountController {

    private static final String PAGE = "accounts/own";

    private final AccountBook book;
    private final SignIn signIn;
    private final PasswordRules rules;

    OwnAccountController(AccountBook book, SignIn signIn, PasswordRules rules) {
        this.book = book;
        this.signIn = signIn;
        this.rules = rules;
    }

    @GetMapping("/account")
    String show(@ModelAttribute("form") PasswordForm form) {
        return PAGE;
    }

    @PostMapping("/account/password")
    String change(
            @ModelAttribute("form") PasswordForm form,
            BindingResult errors,
            SignedIn me,
            Person person,
            HttpServletRequest request,
            HttpServletResponse response) {
        var who = new NewPassword.Person(me.username(), me.displayName());
        NewPassword.check(rules, form.getPassword(), form.getAgain(), who, errors);
        if (form.getPassword().equals(form.getCurrent())) {
            errors.rejectValue("password", "password.asBefore");
        }
        if (!errors.hasErrors()
                && signIn.check(me.username(), form.getCurrent(), request.getRemoteAddr())
                        .isEmpty()) {
            errors.rejectValue("current", "password.wrong");
        }
        if (errors.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return PAGE;
        }
        book.choose(me.id(), form.getPassword(), person.name());
        signIn.write(Kind.PASSWORD_CHANGED, me.username(), request.getRemoteAddr());
        return "redirect:/login?changed";
    }

    @PostMapping("/account/sign-out-everywhere")
    String leaveEverywhere(SignedIn me, HttpServletRequest request) {
        book.endSessions(me.id());
        signIn.write(Kind.SIGNED_OUT_EVERYWHERE, me.username(), request.getRemoteAddr());
        return "redirect:/login?left";
    }
}
