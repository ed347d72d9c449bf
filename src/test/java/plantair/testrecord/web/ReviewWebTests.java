package plantair.testrecord.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.account.Role;
import plantair.account.SignedIn;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.People;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;
import plantair.testrecord.ReviewTest;

/** A second person looks at a test. */
abstract class ReviewWebTests {

    private static final SignedIn BO = People.of(Role.MANAGER);

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private ReviewTest service;

    @BeforeEach
    void recordATest() {
        database.wipe();
        send(PlantForms.SITE);
        send(PlantForms.COMPRESSOR);
        send(PlantForms.RECEIVER);
        send(PlantForms.PIPE);
        send(PlantForms.GAUGE);
        send(PlantForms.certificate("K-1", "2026-01-02"));
        send(tested("2026-05-01"), People.of(Role.TECHNICIAN));
    }

    private static SentForm tested(String day) {
        return PlantForms.pumpUp(day, "60.2", "60.8", "60.5").with("gauge", "1");
    }

    private static SentForm review(long test) {
        return SentForm.to("/tests/" + test + "/review")
                .with("submission", UUID.randomUUID().toString())
                .with("note", "");
    }

    private static SentForm correction() {
        return tested("2026-05-02").at("/tests/1/supersede").with("reason", "wrong day");
    }

    private String send(SentForm form) {
        return send(form, People.ANN);
    }

    private String send(SentForm form, SignedIn who) {
        var answer = form.post(site, who);
        assertThat(answer.status()).as(answer.text()).isEqualTo(302);
        return answer.redirect();
    }

    private String page(String address) {
        return SentForm.get(site, address).text();
    }

    private long reviews() {
        return jdbc.queryForObject("select count(*) from test_review", Long.class);
    }

    @Test
    void showsWhatToLookAt() {
        var page = SentForm.get(site, "/tests/1/review");

        assertThat(page.status()).isEqualTo(200);
        assertThat(page.text())
                .contains("2026-05-01 08:00", "Ann", "Cy (cy)", "pressure gauge G-1: due 2027-01-02, in date")
                .contains("No correction, no restatement, no unusual reading.");
        assertThat(page.page().select("ul.findings li, p").eachText()).isNotEmpty();
    }

    @Test
    void putsTheReviewerOnRecord() {
        assertThat(page("/tests/1")).contains("Not reviewed");
        assertThat(page("/tests")).contains("not reviewed");

        assertThat(send(review(1).with("note", "leak looked at"), BO)).isEqualTo("/tests/1");

        assertThat(page("/tests/1"))
                .contains("Reviewed by Bo (bo) on 2026-06-15 12:00 UTC; locked since. leak looked at");
        assertThat(SentForm.get(site, "/tests").page().select("tbody td").eachText())
                .contains("Bo (bo)");
        assertThat(page("/changes?kind=REVIEW")).contains("Review of", "test 1", "Bo", "leak looked at");
        assertThat(SentForm.get(site, "/tests/1/review").redirect()).isEqualTo("/tests/1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Bo", " bO ", "Bo (bo)", "Bo (of the shift)"})
    void refusesARunOfOnesOwn(String tester) {
        send(tested("2026-05-03").with("tester", tester), People.of(Role.TECHNICIAN));

        var answer = review(2).post(site, BO);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("made the runs");
        assertThat(reviews()).isZero();
    }

    /** Whatever the person is called by now. */
    @ParameterizedTest
    @ValueSource(strings = {"Bo", "Robert", "Robert (shift 2)"})
    void refusesWhatOneTypedInOneself(String name) {
        send(tested("2026-05-03"), BO);
        jdbc.update("update account set display_name = ? where username = 'bo'", name);

        var answer = review(2).post(site, BO);

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.text()).contains("typed the test in");
        assertThat(reviews()).isZero();
    }

    @Test
    void isForManagersAlone() {
        for (Role role : List.of(Role.TECHNICIAN, Role.AUDITOR)) {
            assertThat(review(1).post(site, People.of(role)).status()).isEqualTo(403);
            assertThat(SentForm.get(site, "/tests/1", People.of(role)).page().select("a[href$=/review]"))
                    .isEmpty();
        }
        assertThat(SentForm.get(site, "/tests/1", BO).page().select("a[href$=/review]"))
                .hasSize(1);
        assertThat(reviews()).isZero();
    }

    @Test
    void refusesThePersonsOwnWorkWhoeverAsks() {
        assertThatThrownBy(() -> service.review(1, UUID.randomUUID(), "", "ANN"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void wantsAFormOfOurs() {
        assertThat(review(1).with("submission", "x").post(site, BO).status()).isEqualTo(422);
        assertThat(review(1).with("note", "x".repeat(1001)).post(site, BO).status())
                .isEqualTo(422);
        assertThat(review(7).post(site, BO).status()).isEqualTo(404);
        assertThat(SentForm.get(site, "/tests/7/review").status()).isEqualTo(404);
        assertThat(reviews()).isZero();
    }

    @Test
    void keepsTheFirstOfTwoReviews() {
        jdbc.update("update account set role = 'MANAGER' where username = 'dee'");
        SentForm form = review(1);
        send(form, BO);
        send(form, BO);
        send(review(1), People.of(Role.AUDITOR));

        assertThat(reviews()).isEqualTo(1);
        assertThat(page("/tests/1")).contains("Reviewed by Bo (bo)").doesNotContain("Reviewed by Dee");
    }

    @Test
    void locksAReviewedTest() {
        send(review(1), BO);
        assertThat(page("/tests/1/supersede"))
                .contains("was reviewed by Bo (bo) on 2026-06-15 12:00 UTC and is locked");

        var refused = correction().post(site);
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.error("lockReason")).contains("why a reviewed test is corrected");

        send(correction().with("lockReason", "the log book says the 2nd"));
        assertThat(page("/tests/2"))
                .contains("wrong day Although it was reviewed: the log book says the 2nd", "Not reviewed");
        assertThat(page("/tests/1")).contains("Reviewed by Bo (bo)", "superseded");
    }

    @Test
    void keepsAReviewedTestFromTechnicians() {
        SignedIn technician = People.of(Role.TECHNICIAN);
        SentForm opened = correction().with("notes", "typed before the review");
        send(review(1), BO);

        assertThat(SentForm.get(site, "/tests/1", technician).page().select("a[href$=supersede]"))
                .isEmpty();
        assertThat(SentForm.get(site, "/tests/1/supersede", technician).redirect())
                .isEqualTo("/tests/1");
        var late = opened.with("lockReason", "I say so").post(site, technician);
        assertThat(late.status()).isEqualTo(422);
        assertThat(late.text()).contains("A manager may still correct it");
        assertThat(late.typed("notes")).isEqualTo("typed before the review");
        assertThat(jdbc.queryForObject("select count(*) from pump_up_test", Integer.class))
                .isEqualTo(1);
    }

    @Test
    void takesACorrectionOfAnUnreviewedTestWithoutMore() {
        assertThat(page("/tests/1/supersede")).doesNotContain("reviewed");

        send(correction());

        assertThat(page("/tests/2")).contains("wrong day").doesNotContain("Although");
        assertThat(SentForm.get(site, "/tests/1/review").redirect()).isEqualTo("/tests/1");
        assertThat(review(1).post(site, BO).redirect()).isEqualTo("/tests/1");
        assertThat(reviews()).as("a superseded test is not reviewed").isZero();
    }

    @Test
    void listsWhatIsNotReviewed() {
        send(tested("2026-05-03"));
        send(tested("2026-05-04"));
        send(review(2), BO);
        send(correction());

        assertThat(SentForm.get(site, "/tests?unreviewed=true")
                        .page()
                        .select("tbody tr td:first-child")
                        .eachText())
                .containsExactly("2026-05-04", "2026-05-02");
        assertThat(SentForm.get(site, "/tests?compressor=9&unreviewed=true")
                        .page()
                        .select("tbody tr"))
                .isEmpty();
        assertThat(SentForm.get(site, "/tests").page().select("tbody tr")).hasSize(4);
    }

    @Test
    void isInTheFileOfTests() throws java.io.UnsupportedEncodingException {
        send(tested("2026-05-03"));
        jdbc.update("update account set display_name = 'Bo, \"B\"' where username = 'bo'");
        send(review(1), BO);

        String[] lines = SentForm.get(site, "/export/tests.csv")
                .response()
                .getContentAsString()
                .split("\r\n");

        assertThat(lines[0]).contains(",superseded_by,reviewed_by,reviewed_at,");
        assertThat(lines[1]).contains(",\"Bo, \"\"B\"\" (bo)\",2026-06-15T07:00:00-05:00,");
        assertThat(lines[4]).doesNotContain("2026-06-15T07:00:00-05:00,PU-1").contains(",,,,,PU-1");
    }
}

@OnH2
final class ReviewWebOnH2Tests extends ReviewWebTests {}

@OnPostgres
final class ReviewWebOnPostgresTests extends ReviewWebTests {}
