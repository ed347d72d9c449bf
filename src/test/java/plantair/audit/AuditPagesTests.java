package plantair.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.register.Changes;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.SentForm;

/** The page of the check. */
@OnH2
final class AuditPagesTests {

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Changes changes;

    @Autowired
    private Database database;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private AuditJob job;

    @BeforeEach
    void record() {
        database.wipe();
        database.recordPeople();
        AuditedPlant.record(site);
    }

    private SentForm.Answer checked() {
        assertThat(SentForm.to("/audit/check").post(site).redirect()).isEqualTo("/audit");
        job.start(Duration.ofSeconds(60)); // waits for the one under way, or makes another
        return SentForm.get(site, "/audit");
    }

    @Test
    void showsTheEndOfTheChainAndThatAllIsSound() {
        var page = checked();

        assertThat(page.text())
                .contains(changes.end().orElseThrow().digest(), "every record is as it was recorded")
                .contains("2026-06-15T12:00:00Z");
        assertThat(page.page().select("main [data-kind]").attr("data-kind")).isEqualTo("GOOD");
        assertThat(page.response().getHeader("Refresh")).isNull();
    }

    @Test
    void namesWhatWasAltered() {
        jdbc.update("update receiver set volume = '121 [gal_us]'");
        jdbc.update("update change_record set reason = 'x' where chain_number = 6");

        var page = checked();

        assertThat(page.page().select("main tbody tr").eachText())
                .contains("The record was altered after this line RECEIVER 1 7", "The line was altered COMPRESSOR 1 6");
        assertThat(page.page().select("main [data-kind]").attr("data-kind")).isEqualTo("ALARM");
    }

    /** As an instance that was killed leaves it: under way, and nobody says that he is at it. */
    @Test
    void saysThatACheckBrokeOff() {
        checked();
        jdbc.update("update audit_run set ended_at = null, report = null");

        var page = SentForm.get(site, "/audit");

        assertThat(page.text()).contains("The check broke off");
        assertThat(page.response().getHeader("Refresh")).isNull();
        assertThat(checked().text()).contains("every record is as it was recorded");
    }

    @Test
    void handsOutTheFile() {
        var answer = SentForm.get(site, "/audit/file.zip");

        assertThat(answer.response().getContentType()).isEqualTo("application/zip");
        assertThat(answer.response().getHeader("Content-Disposition")).contains("plant-air-audit-2026-06-15.zip");
        assertThat(answer.response().getContentAsByteArray()).startsWith('P', 'K');
    }
}
