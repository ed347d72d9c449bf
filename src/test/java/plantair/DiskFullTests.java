package plantair;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.boot.webmvc.test.autoconfigure.MockMvcPrint;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import plantair.testing.Database;
import plantair.testing.FixedClock;
import plantair.testing.OnPostgres;
import plantair.testing.People;
import plantair.testing.PlantForms;
import plantair.testing.SentForm;

/** A disk without room: said plainly, what was typed stays, nothing half-written, and it goes on when there is room. */
abstract class DiskFullTests {

    static final String HALF_WRITTEN = """
            select count(*) from pump_up_test t
            where (select count(*) from pump_up_run r where r.test_id = t.id) <> 3
               or not exists (select 1 from pump_up_result p where p.test_id = t.id)""";

    @Autowired
    MockMvcTester site;

    @Autowired
    JdbcTemplate jdbc;

    SentForm.Answer save(String note) {
        return PlantForms.pumpUp("2026-05-12", "62.2", "62.8", "62.5")
                .with("pipes", "")
                .with("submission", UUID.randomUUID().toString())
                .with("notes", note)
                .post(site);
    }

    int tests() {
        return jdbc.queryForObject("select count(*) from pump_up_test", Integer.class);
    }

    void plant() {
        PlantForms.SITE.post(site);
        PlantForms.COMPRESSOR.post(site);
        PlantForms.RECEIVER.post(site);
        assertThat(save("before").status()).isEqualTo(302);
    }

    void saysSo(SentForm.Answer refused, String note) {
        assertThat(refused.text()).contains("The disk is full", "nothing of this was saved", note, "62.8");
        var again = refused.page().select("main form");
        assertThat(again.attr("action")).isEqualTo("/compressors/1/tests");
        assertThat(again.select("input[name=notes]").val()).startsWith(note);
        assertThat(again.select("input[name=submission]").val()).isNotEmpty();
    }

    /** The button of the page sends the same once more. */
    SentForm.Answer sendAgain(SentForm.Answer refused) {
        SentForm form = SentForm.to("/compressors/1/tests");
        for (var field : refused.page().select("main form input")) {
            form = form.with(field.attr("name"), field.val());
        }
        return form.post(site);
    }
}

/** The file system refuses to make the H2 file longer. */
@SpringBootTest
@AutoConfigureMockMvc(print = MockMvcPrint.NONE)
@Import({FixedClock.class, Database.class, People.class})
@DirtiesContext
final class DiskFullOnH2Tests extends DiskFullTests {

    private static final int WRITES_UNTIL_THE_FILE_GROWS = 400;

    @TempDir
    private static Path folder;

    @DynamicPropertySource
    static void limitedDisk(DynamicPropertyRegistry properties) {
        LimitedFiles.register();
        properties.add(
                "spring.datasource.url",
                () -> "jdbc:h2:durable:limited:" + folder.resolve("plant-air").toAbsolutePath()
                        + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH"
                        + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE");
        properties.add(
                "plantair.backup.directory", () -> folder.resolve("backups").toString());
    }

    @AfterEach
    void room() {
        LimitedFiles.setFull(false);
    }

    @Test
    void refusesPlainlyAndGoesOnWhenThereIsRoom() {
        plant();
        int acknowledged = 1;
        LimitedFiles.setFull(true);
        String note = "typed while full 0";
        SentForm.Answer answer = save(note);
        for (int write = 1; answer.status() == 302 && write < WRITES_UNTIL_THE_FILE_GROWS; write++) {
            acknowledged++;
            note = "typed while full " + write;
            answer = save(note);
        }

        assertThat(answer.status()).isEqualTo(507);
        saysSo(answer, note);

        LimitedFiles.setFull(false);

        assertThat(SentForm.get(site, "/tests").status()).isEqualTo(200);
        assertThat(tests()).as("nothing lost, nothing added").isEqualTo(acknowledged);
        assertThat(sendAgain(answer).status()).isEqualTo(302);
        assertThat(tests()).isEqualTo(acknowledged + 1);
        assertThat(jdbc.queryForObject(HALF_WRITTEN, Integer.class)).isZero();
        assertThat(SentForm.get(site, "/export/tests.csv").status()).isEqualTo(200);
    }
}

/** The server answers with the code of a full disk in the middle of the transaction; a trigger stands for the disk. */
@OnPostgres
final class DiskFullOnPostgresTests extends DiskFullTests {

    @Autowired
    private Database database;

    @BeforeEach
    void onePlant() {
        database.wipe();
        plant();
    }

    @AfterEach
    void room() {
        jdbc.execute("drop trigger if exists full_disk on pump_up_result");
        jdbc.execute("drop function if exists full_disk");
    }

    @Test
    void refusesPlainlyAndGoesOnWhenThereIsRoom() {
        jdbc.execute("""
                create function full_disk() returns trigger language plpgsql as $$
                begin raise exception 'could not extend file: No space left on device' using errcode = '53100'; end $$""");
        jdbc.execute("create trigger full_disk before insert on pump_up_result execute function full_disk()");

        var refused = save("typed while full");

        assertThat(refused.status()).isEqualTo(507);
        saysSo(refused, "typed while full");
        assertThat(tests()).isEqualTo(1);
        room();
        assertThat(sendAgain(refused).status()).isEqualTo(302);
        assertThat(tests()).isEqualTo(2);
        assertThat(jdbc.queryForObject(HALF_WRITTEN, Integer.class)).isZero();
    }
}
