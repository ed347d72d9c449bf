package plantair.account.web;

import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import plantair.account.Accounts;

/** The page to sign in; the filter chain takes what is sent from it. */
@Controller
final class LoginController {

    private static final List<String> NEWS = List.of("refused", "left", "ready", "changed");

    private final Accounts accounts;

    LoginController(Accounts accounts) {
        this.accounts = accounts;
    }

    @GetMapping("/login")
    String show(@RequestParam Map<String, String> query, Model model) {
        if (accounts.count() == 0) {
            return "redirect:/setup";
        }
        NEWS.stream().filter(query::containsKey).findFirst().ifPresent(news -> model.addAttribute("news", news));
        model.addAttribute("form", new LoginForm());
        return "accounts/login";
    }

    /** The empty fields of the page; the filter chain reads what is typed into them. */
    static final class LoginForm {

        public String getUsername() {
            return "";
        }

        public String getPassword() {
            return "";
        }
    }
}
