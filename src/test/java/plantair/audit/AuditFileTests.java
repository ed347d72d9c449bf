package plantair.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.transaction.support.TransactionTemplate;
import plantair.register.ChangeKind;
import plantair.register.Changes;
import plantair.testing.AuditRecipe;
import plantair.testing.Database;
import plantair.testing.OnH2;
import plantair.testing.PlantForms;
import plantair.testing.SampleFiles;

/** The audit file, checked by an outsider: with the commands that lie in it and nothing of this program. */
@OnH2
final class AuditFileTests {

    /** What a text may hold that a shell, a table or a line could stumble over. */
    private static final String ODD =
            "  \ttab = \"quoted\" 'single' \n line\r\n %s %d \\n \\N C:\\new $HOME `id` $(id) * é ß 圧縮 🙂 \1 \0 \u2028 ! \t ";

    private static final String SAID = "each record is as its newest change left it";
    private static final int POSITIONS = 50;

    @TempDir
    private Path folder;

    @Autowired
    private AuditFile file;

    @Autowired
    private Changes changes;

    @Autowired
    private Database database;

    @Autowired
    private MockMvcTester site;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private TransactionTemplate transaction;

    @BeforeEach
    void recordSomethingOdd() {
        database.wipe();
        database.recordPeople();
        AuditedPlant.send(site, PlantForms.SITE);
        AuditedPlant.send(site, PlantForms.COMPRESSOR);
        odd(ODD, null);
        odd("", "");
        AuditedPlant.send(site, PlantForms.SITE.with("name", "South"));
        odd(2, ODD + ODD);
    }

    private void odd(String text, String before) {
        transaction.executeWithoutResult(status -> {
            jdbc.update("update compressor set note = ?, maker_model = ? where id = 1", text, text);
            changes.save(Lines.about(ChangeKind.COMPRESSOR, 1, text, before));
        });
    }

    private void odd(long site, String text) {
        transaction.executeWithoutResult(status -> {
            jdbc.update("update site set note = ? where id = ?", text, site);
            changes.save(Lines.about(ChangeKind.SITE, site, text.substring(0, 60), text));
        });
    }

    private void unzip() throws IOException {
        var bytes = new ByteArrayOutputStream();
        file.write(bytes);
        AuditRecipe.unpack(bytes.toByteArray(), folder);
    }

    @Test
    void isSoundByItsOwnRecipeWhateverTextsItHolds() throws IOException, InterruptedException {
        unzip();

        String end = changes.end().orElseThrow().digest();
        assertThat(AuditRecipe.follow(folder).lines())
                .containsExactly("10 lines, end " + end, "7 records", SAID, "0 files");
    }

    @Test
    void holdsOneLineALine() throws IOException {
        unzip();

        assertThat(Files.readString(folder.resolve("changes.txt")).split("\n", -1))
                .hasSize(11)
                .endsWith("");
        assertThat(Files.readString(folder.resolve("records.txt")).split("\n", -1))
                .hasSize(8)
                .endsWith("");
    }

    /** Positions by a fixed seed, in both files together; another byte stands there. */
    @Test
    void showsOneAlteredByteWhereverItIs() throws IOException, InterruptedException {
        unzip();
        var random = new Random(20260615);
        for (String name : List.of("changes.txt", "records.txt")) {
            byte[] sound = Files.readAllBytes(folder.resolve(name));
            for (int i = 0; i < POSITIONS / 2; i++) {
                byte[] altered = sound.clone();
                int position = i == 0 ? sound.length - 1 : random.nextInt(sound.length);
                altered[position] ^= (byte) (1 + random.nextInt(255));
                Files.write(folder.resolve(name), altered);

                assertThat(AuditRecipe.follow(folder))
                        .as(name + " at " + position)
                        .contains("FAULT");
            }
            Files.write(folder.resolve(name), sound);
        }
        assertThat(AuditRecipe.follow(folder)).contains(SAID).doesNotContain("FAULT");
    }

    @Test
    void showsOneAlteredByteOfAPhotoAndAPhotoLeftOut() throws IOException, InterruptedException {
        AuditedPlant.attach(site, "COMPRESSOR/1", SampleFiles.jpeg());
        AuditedPlant.attach(site, "SITE/1", SampleFiles.pdf());
        AuditedPlant.attach(site, "SITE/2", SampleFiles.jpeg());
        unzip();
        assertThat(AuditRecipe.follow(folder)).contains(SAID, "2 files").doesNotContain("FAULT");
        Path photo = folder.resolve(
                "files/" + jdbc.queryForObject("select sha256 from attachment where id = 1", String.class) + ".jpg");
        byte[] sound = Files.readAllBytes(photo);
        assertThat(sound).isEqualTo(SampleFiles.jpeg());
        byte[] altered = sound.clone();
        altered[altered.length / 2] ^= 1;

        Files.write(photo, altered);
        assertThat(AuditRecipe.follow(folder)).contains("FAULT files/" + photo.getFileName() + ": its bytes");
        Files.delete(photo);
        assertThat(AuditRecipe.follow(folder))
                .contains("FAULT files: " + photo.getFileName().toString().substring(0, 64));
    }

    @Test
    void showsALineTakenOutOrARecordLeftOut() throws IOException, InterruptedException {
        unzip();
        Path lines = folder.resolve("changes.txt");
        List<String> sound = Files.readAllLines(lines);
        Files.write(lines, sound.subList(1, sound.size()));
        assertThat(AuditRecipe.follow(folder)).contains("FAULT changes.txt: line 1 ");
        Files.write(lines, sound);
        Path records = folder.resolve("records.txt");
        Files.write(records, Files.readAllLines(records).subList(1, 7));
        assertThat(AuditRecipe.follow(folder)).contains("FAULT records and changes differ");
    }
}
