package plantair.account.web;

import org.springframework.validation.Errors;
import plantair.account.PasswordRules;

/** A chosen password, typed twice. */
final class NewPassword {

    private NewPassword() {}

    /** Refuses what breaks the rules, and a slip of the finger. */
    static void check(PasswordRules rules, String password, String again, Person who, Errors errors) {
        rules.problem(password, who.username(), who.displayName())
                .ifPresent(problem -> errors.rejectValue(
                        "password", problem, new Object[] {PasswordRules.SHORTEST, PasswordRules.MOST_BYTES}, problem));
        if (!password.equals(again)) {
            errors.rejectValue("again", "password.notTheSame");
        }
    }

    /** Whose password it is. */
    record Person(String username, String displayName) {}
}
