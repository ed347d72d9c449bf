package plantair.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.JdbcTemplate;
import plantair.testing.Client;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.People;

/** Signing in and out over the wire: cookies, sessions and tokens as a browser has them. */
abstract class SignInServerTests {

    private static final String CHOSEN = "seven grey herons at noon";

    @LocalServerPort
    private int port;

    @Autowired
    private Database database;

    @Autowired
    private JdbcTemplate jdbc;

    private Client ann;

    @AfterEach
    void letInPeople() {
        database.letInPeople();
    }

    @BeforeEach
    void startEmpty() {
        database.wipe();
        ann = Client.stranger("http://127.0.0.1:" + port);
    }

    private Client signedIn() {
        return Client.signedIn("http://127.0.0.1:" + port, "ann", People.PASSWORD);
    }

    private List<String> events() {
        return jdbc.queryForList("select kind || ' ' || username from account_event order by id", String.class);
    }

    @Test
    void leadsAStrangerToTheLoginAndThenToThePageThatWasAskedFor() {
        var asked = ann.get("/tests?page=1");
        var let = ann.signIn("ANN ", People.PASSWORD);

        assertThat(asked.statusCode()).isEqualTo(302);
        assertThat(asked.headers().firstValue("Location"))
                .hasValueSatisfying(to -> assertThat(to).endsWith("/login"));
        assertThat(let.headers().firstValue("Location"))
                .hasValueSatisfying(to -> assertThat(to).contains("/tests?page=1"));
        assertThat(ann.get("/tests").body()).contains("Sign out", "Ann");
        assertThat(events()).containsExactly("SIGNED_IN ann");
    }

    @Test
    void givesNoSessionToAStranger() {
        ann.get("/tests");
        ann.get("/login");

        assertThat(ann.cookie("SESSION")).isEmpty();
        assertThat(jdbc.queryForObject("select count(*) from spring_session", Integer.class))
                .isZero();
    }

    @Test
    void saysTheSameOfAWrongPasswordAnUnknownNameAndAClosedAccount() {
        jdbc.update("update account set enabled = false where username = 'bo'");

        for (var typed : List.of(List.of("ann", "wrong"), List.of("nobody", "wrong"), List.of("bo", People.PASSWORD))) {
            var refused = ann.signIn(typed.get(0), typed.get(1));
            assertThat(refused.headers().firstValue("Location"))
                    .hasValueSatisfying(to -> assertThat(to).endsWith("/login?refused"));
        }

        assertThat(ann.get("/login?refused").body()).contains("Not let in", "quarter of an hour");
        assertThat(ann.get("/tests").statusCode()).isEqualTo(302);
        assertThat(events()).hasSize(3).first().isEqualTo("FAILED ann");
        assertThat(events().get(1)).matches("FAILED unknown [0-9a-f]{16}");
    }

    @Test
    void refusesEvenTheRightPasswordWhileANameWaits() {
        for (int i = 0; i < 5; i++) {
            ann.signIn("ann", "wrong");
        }

        ann.signIn("ann", People.PASSWORD);

        assertThat(ann.get("/tests").statusCode()).isEqualTo(302);
        assertThat(events()).as("a try while waiting does not count").hasSize(5);
        assertThat(Client.signedIn("http://127.0.0.1:" + port, "bo", People.PASSWORD)
                        .get("/tests")
                        .statusCode())
                .as("others are let in")
                .isEqualTo(200);
    }

    @Test
    void givesAnotherSessionToEachSignIn() {
        ann.signIn("ann", People.PASSWORD);
        String first = ann.cookie("SESSION").orElseThrow();

        ann.signIn("ann", People.PASSWORD);

        assertThat(ann.cookie("SESSION")).isPresent().get().isNotEqualTo(first);
        assertThat(ann.get("/tests").statusCode()).isEqualTo(200);
        var thief = Client.stranger("http://127.0.0.1:" + port);
        assertThat(thief.get("/tests", "Cookie", "SESSION=" + first).statusCode())
                .isEqualTo(302);
    }

    @Test
    void doesNotAdoptASessionThatWasPlanted() {
        String planted = "cGxhbnRlZC1zZXNzaW9uLWlkLW9mLWFuLWF0dGFja2Vy";
        var answer = ann.postAsIs(
                "/login",
                Map.of("username", "ann", "password", People.PASSWORD, "_csrf", ann.token()),
                "Cookie",
                "SESSION=" + planted + "; csrf=" + ann.cookie("csrf").orElseThrow());

        assertThat(answer.statusCode()).isEqualTo(302);
        assertThat(ann.cookie("SESSION")).isPresent().get().isNotEqualTo(planted);
        var thief = Client.stranger("http://127.0.0.1:" + port);
        assertThat(thief.get("/tests", "Cookie", "SESSION=" + planted).statusCode())
                .isEqualTo(302);
    }

    @Test
    void marksItsCookies() {
        var let = ann.signIn("ann", People.PASSWORD);
        var page = Client.stranger("http://127.0.0.1:" + port).get("/login");

        assertThat(let.headers().allValues("Set-Cookie"))
                .filteredOn(cookie -> cookie.startsWith("SESSION="))
                .singleElement()
                .satisfies(cookie ->
                        assertThat(cookie).contains("HttpOnly", "SameSite=Lax").doesNotContain("Max-Age"));
        assertThat(page.headers().allValues("Set-Cookie"))
                .filteredOn(cookie -> cookie.startsWith("csrf="))
                .singleElement()
                .satisfies(cookie -> assertThat(cookie).contains("HttpOnly", "SameSite=Lax"));
    }

    @Test
    void endsASessionOnSigningOut() {
        var client = signedIn();
        String session = client.cookie("SESSION").orElseThrow();

        assertThat(client.post("/logout", Map.of()).statusCode()).isEqualTo(302);

        assertThat(client.get("/tests", "Cookie", "SESSION=" + session).statusCode())
                .isEqualTo(302);
        assertThat(events()).containsExactly("SIGNED_IN ann", "SIGNED_OUT ann");
    }

    @Test
    void endsAllSessionsOnSigningOutEverywhere() {
        var phone = signedIn();
        var desk = signedIn();
        var other = Client.signedIn("http://127.0.0.1:" + port, "bo", People.PASSWORD);

        assertThat(phone.post("/account/sign-out-everywhere", Map.of()).statusCode())
                .isEqualTo(302);

        assertThat(phone.get("/tests").statusCode()).isEqualTo(302);
        assertThat(desk.get("/tests").statusCode()).isEqualTo(302);
        assertThat(other.get("/tests").statusCode()).isEqualTo(200);
    }

    @Test
    void takesAFormWithItsTokenOnly() {
        var client = signedIn();
        Map<String, String> site =
                Map.of("name", "North", "zone", "UTC", "elevation.number", "3", "elevation.unit", "m");

        assertThat(client.postAsIs("/sites", site).statusCode()).isEqualTo(403);
        assertThat(client.postAsIs("/login", Map.of("username", "ann", "password", People.PASSWORD))
                        .statusCode())
                .isEqualTo(403);
        assertThat(jdbc.queryForObject("select count(*) from site", Integer.class))
                .isZero();
        assertThat(client.post("/sites", site).statusCode()).isEqualTo(302);
        assertThat(jdbc.queryForObject("select changed_by from change_record", String.class))
                .isEqualTo("Ann (ann)");
    }

    @Test
    void looksAtTheAccountAnewWithEachRequest() {
        var client = signedIn();
        jdbc.update("update account set role = 'AUDITOR' where username = 'ann'");

        assertThat(client.get("/sites/new").statusCode()).isEqualTo(403);
        assertThat(client.get("/tests").body()).doesNotContain("/tests/new");
        jdbc.update("update account set enabled = false where username = 'ann'");

        assertThat(client.get("/tests").statusCode()).isEqualTo(302);
    }

    @Test
    void letsNothingBeDoneBeforeAOneTimePasswordIsChanged() {
        jdbc.update("update account set must_change_password = true where username = 'ann'");
        var client = signedIn();

        var asked = client.get("/tests");
        assertThat(asked.statusCode()).isEqualTo(302);
        assertThat(asked.headers().firstValue("Location"))
                .hasValueSatisfying(to -> assertThat(to).endsWith("/account"));
        assertThat(client.post("/sites", Map.of("name", "North")).statusCode()).isEqualTo(403);

        var changed = client.post(
                "/account/password", Map.of("current", People.PASSWORD, "password", CHOSEN, "again", CHOSEN));

        assertThat(changed.headers().firstValue("Location"))
                .hasValueSatisfying(to -> assertThat(to).endsWith("/login?changed"));
        assertThat(client.get("/tests").statusCode()).as("signed out").isEqualTo(302);
        client.signIn("ann", CHOSEN);
        assertThat(client.get("/tests").statusCode()).isEqualTo(200);
        assertThat(jdbc.queryForObject("select after_text from change_record", String.class))
                .contains("password: chosen by this person")
                .doesNotContain("bcrypt", CHOSEN);
        assertThat(jdbc.queryForObject("select password_hash from account where username = 'ann'", String.class))
                .startsWith("{bcrypt}$2a$")
                .doesNotContain(CHOSEN);
    }

    @Test
    void asksForThePasswordNowBeforeItTakesAnother() {
        var client = signedIn();

        var refused = client.post("/account/password", Map.of("current", "wrong", "password", CHOSEN, "again", CHOSEN));

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(refused.body()).getElementById("current-error").text())
                .contains("not your password");
        assertThat(refused.body()).doesNotContain(CHOSEN);
        assertThat(client.get("/tests").statusCode()).isEqualTo(200);
    }

    @Test
    void takesNoSessionForAProgramAndNoProgramForAPerson() {
        var client = signedIn();

        assertThat(client.get("/api/v1/openapi.json").statusCode()).isEqualTo(401);
        var program = ann.get("/api/v1/openapi.json", "Authorization", People.basic());
        assertThat(program.statusCode()).isEqualTo(200);
        assertThat(program.headers().firstValue("Set-Cookie")).isEmpty();
        assertThat(ann.get("/tests", "Authorization", People.basic()).statusCode())
                .isEqualTo(302);
    }
}

@OnH2
final class SignInServerOnH2Tests extends SignInServerTests {}

@OnPostgres
final class SignInServerOnPostgresTests extends SignInServerTests {}
