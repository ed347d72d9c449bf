package plantair.backup.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.util.FileSystemUtils;
import plantair.testing.OnH2;
import plantair.testing.OnPostgres;
import plantair.testing.SentForm;

/** The page of the backups. */
@OnH2
final class BackupPageTests {

    private static final Path FOLDER = Path.of("target/backups");

    @Autowired
    private MockMvcTester site;

    @BeforeEach
    void noBackup() throws IOException {
        FileSystemUtils.deleteRecursively(FOLDER);
    }

    @Test
    void makesOneAndHandsItOut() throws Exception {
        assertThat(SentForm.get(site, "/backup").text()).contains("There is no backup yet", "02:30");

        var made = SentForm.to("/backup").post(site);

        assertThat(made.redirect()).isEqualTo("/backup");
        var row = SentForm.get(site, "/backup").page().selectFirst("tbody tr");
        assertThat(row.text()).contains("2026-06-15 12:00:00 UTC", "by hand");
        String address = row.selectFirst("a").attr("href");
        byte[] file = SentForm.get(site, address).response().getContentAsByteArray();
        assertThat(HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(file)))
                .isEqualTo(row.selectFirst("code").text());
        assertThat(Files.readString(FOLDER.resolve(address.substring("/backup/".length()) + ".sha256")))
                .isEqualTo(row.selectFirst("code").text() + "  " + address.substring("/backup/".length()) + "\n");
    }

    @Test
    void listsTwoOfOneSecondOnPagesOfTwentyFive() {
        for (int backup = 1; backup <= 26; backup++) {
            assertThat(SentForm.to("/backup").post(site).status()).isEqualTo(302);
        }

        assertThat(SentForm.get(site, "/backup").page().select("tbody tr")).hasSize(25);
        assertThat(SentForm.get(site, "/backup?page=2").page().select("tbody tr"))
                .hasSize(1);
    }

    @Test
    void tellsOfOneThatFailedUntilTheNextSucceeds() throws IOException {
        Files.createFile(FOLDER); // no folder

        var failed = SentForm.to("/backup").post(site);

        assertThat(failed.status()).isEqualTo(500);
        assertThat(failed.text()).contains("The last backup was not made (2026-06-15 12:00:00 UTC)");
        assertThat(SentForm.get(site, "/backup").text()).contains("The last backup was not made");
        Files.delete(FOLDER);
        SentForm.to("/backup").post(site);
        assertThat(SentForm.get(site, "/backup").text()).doesNotContain("was not made");
    }

    @Test
    void handsOutNothingElse() throws IOException {
        SentForm.to("/backup").post(site);
        Files.writeString(FOLDER.resolve("secret"), "x");
        String unfinished = "plant-air-2026-06-15T130000Z-daily.sql.gz";
        Files.writeString(FOLDER.resolve(unfinished), "no sum yet");

        assertThat(Stream.of("secret", unfinished, "..%2Fpom.xml", "plant-air-2026-99-99T999999Z-daily.sql.gz")
                        .map(name -> SentForm.get(site, "/backup/" + name).status()))
                .allSatisfy(status -> assertThat(status).isBetween(400, 404));
    }
}

@OnPostgres
final class BackupPageOnPostgresTests {

    @Autowired
    private MockMvcTester site;

    @Test
    void leavesPostgresToItsOwnTools() {
        var page = SentForm.get(site, "/backup");

        assertThat(page.text()).contains("pg_dump", "pg_restore");
        assertThat(page.page().select("main form")).isEmpty();
        assertThat(SentForm.to("/backup").post(site).status()).isEqualTo(409);
    }
}
