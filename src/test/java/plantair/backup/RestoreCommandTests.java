package plantair.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a restore refuses, and that a refusal leaves everything as it was. */
final class RestoreCommandTests {

    @TempDir
    private Path folder;

    private Path backup;

    private DatabaseSettings database(String name) {
        return new DatabaseSettings("jdbc:h2:file:" + folder.resolve(name) + ";MODE=PostgreSQL", "sa", "");
    }

    private static String text(DatabaseSettings database) throws SQLException {
        try (var connection = DriverManager.getConnection(database.url() + ";IFEXISTS=TRUE", database.user(), "");
                var rows = connection.createStatement().executeQuery("select t from words")) {
            rows.next();
            return rows.getString(1);
        }
    }

    private static void fill(DatabaseSettings database, String text) throws SQLException {
        try (var connection = DriverManager.getConnection(database.url(), database.user(), "")) {
            connection.createStatement().execute("create table words (t text)");
            connection.createStatement().execute("insert into words values ('" + text + "')");
        }
    }

    @BeforeEach
    void backupOfOneDatabase() throws SQLException, IOException, InterruptedException {
        fill(database("original"), "kept");
        backup = new BackupCommand(database("original"), folder.resolve("backups")).run(Optional.empty());
    }

    @Test
    void makesANewDatabase() throws IOException, SQLException {
        new RestoreCommand(database("deep/restored")).run(backup);

        assertThat(text(database("deep/restored"))).isEqualTo("kept");
        assertThat(folder.resolve("deep")).isDirectoryNotContaining("glob:**restoring*");
    }

    @Test
    void overwritesNothing() throws SQLException {
        fill(database("other"), "mine");

        assertThatThrownBy(() -> new RestoreCommand(database("other")).run(backup))
                .isInstanceOf(BackupFailed.class)
                .hasMessageContaining("nothing is overwritten");
        assertThat(text(database("other"))).isEqualTo("mine");
    }

    @Test
    void refusesAnAlteredFile() throws IOException {
        byte[] bytes = Files.readAllBytes(backup);
        bytes[bytes.length / 2] ^= 1;
        Files.write(backup, bytes);

        assertThatThrownBy(() -> new RestoreCommand(database("restored")).run(backup))
                .isInstanceOf(BackupFailed.class)
                .hasMessageContaining("damaged");
        assertThat(folder).isDirectoryNotContaining("glob:**restored*.mv.db");
    }

    @Test
    void refusesAFileWithoutItsSum() throws IOException {
        Files.delete(Checksum.besides(backup));

        assertThatThrownBy(() -> new RestoreCommand(database("restored")).run(backup))
                .isInstanceOf(BackupFailed.class)
                .hasMessageContaining("sum is missing");
    }

    /** The sum is right and the content is not: nothing of it may pass for a database. */
    @Test
    void leavesNothingOfAScriptThatCannotBeRead() throws IOException {
        Files.writeString(backup, "not gzip");
        Files.writeString(Checksum.besides(backup), Checksum.line(Checksum.of(backup), "x"));

        assertThatThrownBy(() -> new RestoreCommand(database("restored")).run(backup))
                .isInstanceOf(BackupFailed.class);
        assertThat(folder).isDirectoryNotContaining("glob:**restor*.mv.db");
    }

    @ParameterizedTest
    @ValueSource(strings = {"jdbc:postgresql://host/plantair", "jdbc:h2:mem:plant", "jdbc:h2:tcp://host/plant", "x"})
    void refusesWhatIsNoFile(String url) {
        assertThatThrownBy(() -> new RestoreCommand(new DatabaseSettings(url, "sa", "")).run(backup))
                .isInstanceOf(BackupFailed.class)
                .hasMessageContaining("pg_restore");
    }
}
