package plantair.register.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.account.Role;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.People;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;

/** The history of all records. It is 2026-06-15, noon UTC, and 07:00 at the works. */
abstract class ChangesPageTests {

    @Autowired
    private MockMvcTester site;

    @Autowired
    private Database database;

    @Autowired
    private JdbcTemplate jdbc;

    @BeforeEach
    void recordSomething() {
        database.wipe();
        send(PlantForms.SITE);
        jdbc.update("update account set display_name = 'Bo 100%' where username = 'bo'");
        assertThat(PlantForms.COMPRESSOR.post(site, People.of(Role.MANAGER)).status())
                .isEqualTo(302);
        send(PlantForms.GAUGE.with("tag", "G_1"));
        send(PlantForms.RECEIVER);
        send(SentForm.to("/compressors/1/events/new")
                .with("submission", UUID.randomUUID().toString())
                .with("happenedOn", "2026-03-01")
                .with("kind", "VALVES")
                .with("doneBy", "Ann"));
    }

    private void send(SentForm form) {
        var answer = form.post(site);
        assertThat(answer.status()).as(answer.text()).isEqualTo(302);
    }

    private List<String> names(String asked) {
        var page = SentForm.get(site, "/changes?" + asked);
        assertThat(page.status()).isEqualTo(200);
        return page.page().select("tbody th").eachText();
    }

    @Test
    void tellsWhenByBothClocks() {
        var rows = SentForm.get(site, "/changes").page().select("tbody tr");

        assertThat(rows.eachText())
                .allMatch(row -> row.contains("2026-06-15 12:00:00 UTC"))
                .filteredOn(row -> row.contains("2026-06-15 07:00:00 America/Chicago"))
                .hasSize(4);
        assertThat(rows.get(2).text())
                .as("a gauge belongs to no site")
                .contains("G_1")
                .doesNotContain("Chicago");
        assertThat(rows.get(0).text()).contains("line 5", "Maintenance of C-1", "Ann");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "kind=SITE|Site North works",
                "kind=EVENT|Maintenance of C-1",
                "person=bo|Compressor C-1",
                "person=%|Compressor C-1",
                "name=g_|Instrument G_1",
                "name=WORKS&from=2026-06-15&to=2026-06-15|Site North works",
                "kind=RECEIVER&person=ann&name=r-1|Receiver R-1",
            })
    void showsWhatIsAskedFor(String asked, String only) {
        assertThat(names(asked)).containsExactly(only);
    }

    @ParameterizedTest
    @CsvSource({"person=_", "name=!", "to=2026-06-14", "from=2026-06-16", "kind=PIPE", "person=bo&kind=SITE"})
    void showsNothingWhereNothingFits(String asked) {
        assertThat(names(asked)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"kind=NONE,kind", "from=2026-02-30,from", "from=2026-06-15&to=2026-06-14,to"})
    void saysBesideTheFieldWhatItCannotRead(String asked, String field) {
        var page = SentForm.get(site, "/changes?" + asked);

        assertThat(page.status()).isEqualTo(422);
        assertThat(page.error(field)).isNotEmpty();
    }

    @Test
    void keepsWhatWasAskedForOnTheNextPage() {
        for (int i = 0; i < 60; i++) {
            jdbc.update(
                    "insert into change_record (changed_at, changed_by, kind, object_id, object_name, after_text, reason)"
                            + " values (timestamp with time zone '2026-06-01 00:00:00+00', 'Zoë & Co', 'SITE', 1, 'x', 'x', 'x')");
        }

        var page = new SentForm.Answer(site.get()
                .uri("/changes")
                .param("person", "Zoë &")
                .param("kind", "SITE")
                .exchange()
                .getResponse());

        assertThat(page.page().select("tbody tr")).hasSize(50);
        assertThat(page.typed("person")).isEqualTo("Zoë &");
        URI next = URI.create(page.page().select("a[rel=next]").attr("href"));
        var second = new SentForm.Answer(site.get().uri(next).exchange().getResponse());
        assertThat(second.page().select("tbody tr")).hasSize(10);
        assertThat(second.typed("person")).isEqualTo("Zoë &");
        assertThat(SentForm.get(site, "/changes?page=99").status()).isEqualTo(404);
        assertThat(SentForm.get(site, "/changes?page=-1").status()).isEqualTo(404);
    }

    @Test
    void leadsToTheCheck() {
        assertThat(SentForm.get(site, "/changes").page().select("main a[href=/audit]"))
                .hasSize(1);
    }
}

@OnH2
final class ChangesPageOnH2Tests extends ChangesPageTests {}

@OnPostgres
final class ChangesPageOnPostgresTests extends ChangesPageTests {}
