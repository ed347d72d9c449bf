package plantair.account.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.anonymous;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.account.Role;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.People;
import plantair.testing.SentForm;

/** The pages of accounts. */
abstract class AccountWebTests {

    private static final SentForm EVE = SentForm.to("/accounts")
            .with("username", "Eve.2")
            .with("displayName", "Eve Øst")
            .with("role", "TECHNICIAN");

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private PasswordEncoder passwords;

    @AfterEach
    void letInPeople() {
        database.letInPeople();
    }

    @BeforeEach
    void startEmpty() {
        database.wipe();
    }

    private String hash(String username) {
        return jdbc.queryForObject("select password_hash from account where username = ?", String.class, username);
    }

    private SentForm edit(int id, String name, Role role, boolean enabled) {
        var form = SentForm.to("/accounts/" + id)
                .with("displayName", name)
                .with("role", role.name())
                .with("edit.version", "0")
                .with("edit.reason", "new job");
        return enabled ? form.with("enabled", "true") : form;
    }

    @Test
    void opensAnAccountWithAOneTimePasswordShownOnce() {
        var opened = EVE.post(site);

        String password = opened.page().getElementById("one-time").text();
        assertThat(opened.status()).isEqualTo(200);
        assertThat(opened.response().getHeader("Cache-Control")).isEqualTo("no-store");
        assertThat(passwords.matches(password, hash("eve.2"))).isTrue();
        assertThat(jdbc.queryForObject(
                        "select must_change_password from account where username = 'eve.2'", Boolean.class))
                .isTrue();
        assertThat(SentForm.get(site, "/accounts").text()).contains("eve.2", "Eve Øst", "Technician");
        assertThat(SentForm.get(site, "/changes").page().select("tbody tr").text())
                .contains(
                        "Ann (ann) line 1 Account eve.2 new username: eve.2 name: Eve Øst role: technician may sign in: yes")
                .doesNotContain(password, "bcrypt");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            username    | ann           | username    | belongs to an account already
            username    | x             | username    | 2 to 40
            username    | 7up           | username    | beginning with a letter
            username    | a b           | username    | 2 to 40
            displayName | ``            | displayName | Type something
            role        | ``            | role        | Choose one
            role        | ROOT          | role        | not in the list""")
    void opensNoAccountThatCannotBe(String field, String typed, String beside, String message) {
        var refused = EVE.with(field, typed).post(site);

        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.error(beside)).contains(message);
        assertThat(jdbc.queryForObject("select count(*) from account", Integer.class))
                .isEqualTo(4);
    }

    @Test
    void changesARoleWithAReasonAndWritesItDown() {
        var saved = edit(3, "Cy", Role.MANAGER, true).post(site);

        assertThat(saved.redirect()).isEqualTo("/accounts");
        assertThat(SentForm.get(site, "/changes").page().select("tbody tr").text())
                .isEqualTo(
                        "2026-06-15 12:00:00 UTC Ann (ann) line 1 Account cy role: technician role: manager new job");
        assertThat(edit(3, "Cy", Role.AUDITOR, true).post(site).status())
                .as("seen before it changed")
                .isEqualTo(409);
        assertThat(edit(2, "Bo", Role.AUDITOR, true)
                        .with("edit.reason", "")
                        .post(site)
                        .error("edit.reason"))
                .contains("Type something");
    }

    @Test
    void keepsTheLastAdministrator() {
        var demoted = edit(1, "Ann", Role.AUDITOR, true).post(site);
        var closed = edit(1, "Ann", Role.ADMINISTRATOR, false).post(site);

        assertThat(demoted.error("role")).contains("last administrator");
        assertThat(closed.error("role")).contains("last administrator");
        edit(2, "Bo", Role.ADMINISTRATOR, true).post(site);
        assertThat(edit(1, "Ann", Role.AUDITOR, true).post(site).redirect()).isEqualTo("/accounts");
    }

    @Test
    void makesANewOneTimePasswordAndEndsTheSessions() {
        String before = hash("bo");

        var made = SentForm.to("/accounts/2/password").post(site);

        String password = made.page().getElementById("one-time").text();
        assertThat(hash("bo")).isNotEqualTo(before);
        assertThat(passwords.matches(password, hash("bo"))).isTrue();
        assertThat(jdbc.queryForObject("select epoch from account where username = 'bo'", Integer.class))
                .isEqualTo(1);
        assertThat(SentForm.get(site, "/changes").text())
                .contains("password: one-time, made for this person")
                .doesNotContain(password);
        assertThat(SentForm.get(site, "/accounts/2/edit").text()).doesNotContain(password, "bcrypt");
        assertThat(SentForm.to("/accounts/99/password").post(site).status()).isEqualTo(404);
    }

    @ParameterizedTest
    @CsvSource({
        "brass,                     brass,                     password, At least 12",
        "seven grey herons at noon, seven grey herons at dawn, again,    do not agree",
        "password password 1,       password password 1,       password, Too easy to guess",
        "brass kettle under fog 61, brass kettle under fog 61, password, the password you have now"
    })
    void takesNoPoorPasswordOfOnesOwn(String password, String again, String beside, String message) {
        var refused = SentForm.to("/account/password")
                .with("current", People.PASSWORD)
                .with("password", password)
                .with("again", again)
                .post(site);

        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.error(beside)).contains(message);
        assertThat(hash("ann")).isEqualTo(hash("bo"));
    }

    @Test
    void listsSignInsForTheAdministrator() {
        jdbc.update("insert into account_event (happened_at, kind, username, address)"
                + " values (timestamp with time zone '2026-06-15 11:00:00+00', 'FAILED', 'bo', '192.0.2.7')");

        assertThat(SentForm.get(site, "/accounts/sign-ins")
                        .page()
                        .select("tbody tr")
                        .text())
                .isEqualTo("2026-06-15 11:00:00 UTC refused bo 192.0.2.7");
    }

    @Test
    void hidesTheFirstStepsOnceThereIsAnAccount() {
        var form = SentForm.to("/setup")
                .with("code", "0")
                .with("username", "eve")
                .with("displayName", "Eve")
                .with("password", "seven grey herons at noon")
                .with("again", "seven grey herons at noon");

        assertThat(site.get().uri("/setup").with(anonymous())).hasStatus(404);
        assertThat(form.post(site).status()).isEqualTo(404);
        jdbc.update("delete from account");
        assertThat(site.get().uri("/login").with(anonymous())).hasRedirectedUrl("/setup");
        assertThat(form.post(site).error("code")).contains("not the code");
        assertThat(jdbc.queryForObject("select count(*) from account", Integer.class))
                .isZero();
    }
}

@OnH2
final class AccountOnH2WebTests extends AccountWebTests {}

@OnPostgres
final class AccountOnPostgresWebTests extends AccountWebTests {}
