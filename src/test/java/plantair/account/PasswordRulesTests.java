package plantair.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PasswordRulesTests {

    private final PasswordRules rules = new PasswordRules();

    @ParameterizedTest
    @CsvSource({
        "short1x!yz9,               password.tooShort",
        "Password1234!,             password.weak",
        "passwordpassword,          password.weak",
        "P@ssw0rdP@ssw0rd,          password.weak",
        "qwertyuiop12,              password.weak",
        "123456789012,              password.weak",
        "abcdefghijkl,              password.weak",
        "zzzzzzzzzzzz,              password.weak",
        "letmein letmein,           password.weak",
        "Plantair2026!,             password.weak",
        "ilse.oberg-ilse,           password.weak",
        "Ilse Lindqvist,            password.weak"
    })
    void refusesWhatIsShortOrEasyToGuess(String password, String problem) {
        assertThat(rules.problem(password, "ilse.oberg", "Ilse Lindqvist")).contains(problem);
    }

    @ParameterizedTest
    @CsvSource({"brass kettle under fog 61", "seven grey herons at noon", "k3j9x-2mfp7-qq8rt", "фиалка мост луна 7 рек"
    })
    void takesWordsThatDoNotBelongTogetherInAnyScript(String password) {
        assertThat(rules.problem(password, "ilse.oberg", "Ilse Lindqvist")).isEmpty();
    }

    /** bcrypt's own limit; an é is two bytes of UTF-8. */
    @Test
    void refusesMoreBytesThanBcryptReads() {
        String base = "brass kettle under fog 61 seven grey herons at noon; 4 wet dogs, one ox";

        assertThat(base).hasSize(71);
        assertThat(rules.problem(base + "z", "ilse", "Ilse")).isEmpty();
        assertThat(rules.problem(base + "é", "ilse", "Ilse")).contains("password.tooLong");
        assertThat(rules.problem("x".repeat(100_000), "ilse", "Ilse")).contains("password.tooLong");
    }

    @Test
    void makesOneTimePasswordsThatKeepToTheRulesAndNeverRepeat() {
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < 200; i++) {
            String made = OneTimePassword.make();
            assertThat(made).matches("([a-z2-9]{5}-){3}[a-z2-9]{5}");
            assertThat(rules.problem(made, "ilse", "Ilse")).isEmpty();
            assertThat(seen.add(made)).isTrue();
        }
    }
}
