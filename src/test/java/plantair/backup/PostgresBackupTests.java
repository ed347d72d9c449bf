package plantair.backup;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plantair.testing.AppProcess;
import plantair.testing.Client;
import plantair.testing.InstalledPostgres;
import plantair.testing.People;
import plantair.testing.PlantForms;

/** The commands that docs/operating.md and the page of the backups give for PostgreSQL, run as they stand there. */
final class PostgresBackupTests {

    private static final String DEMO = "--spring.flyway.locations=classpath:db/migration,classpath:db/demo";
    private static final String DUMP = "pg_dump --format=custom --file=FILE plantair";
    private static final String RESTORE =
            "pg_restore --exit-on-error --single-transaction --no-owner --dbname=plantair_restored FILE";

    @TempDir
    private Path folder;

    @TempDir
    private Path other;

    @Test
    void givesTheCommandsThatAreTested() throws IOException {
        String document = Files.readString(Path.of("docs/operating.md"));
        String page = Files.readString(Path.of("src/main/resources/templates/backup/index.html"));

        assertThat(document).contains(DUMP.replace("FILE", "plant-air.dump"));
        assertThat(document).contains(RESTORE.replace("FILE", "plant-air.dump"));
        assertThat(page).contains("pg_dump --format=custom --file=");
        assertThat(page).contains("pg_restore --exit-on-error --single-transaction --no-owner --dbname=");
    }

    @Test
    void restoresADumpMadeWhileTheProgramRuns() throws Exception {
        var installed = InstalledPostgres.find();
        Assumptions.assumeTrue(
                installed.isPresent(),
                "pg_dump is not tested: no PostgreSQL server with its programs is installed here");
        String dump = folder.resolve("plant-air.dump").toString();
        try (var server = installed.get().start(folder.resolve("server"))) {
            server.run("createdb plantair");
            String export;
            try (AppProcess app = AppProcess.onDatabase(folder, server.jdbcUrl("plantair"), server.user(), DEMO)) {
                Client ann = Client.first(app);
                ann.saved(PlantForms.SITE.with("name", "Typed later"));
                export = ann.page("/export/tests.csv");
                server.run(DUMP.replace("FILE", dump));
            }

            server.run("createdb plantair_restored");
            server.run(RESTORE.replace("FILE", dump));

            String url = server.jdbcUrl("plantair_restored");
            try (AppProcess app = AppProcess.onDatabase(other, url, server.user(), DEMO)) {
                Client ann = Client.signedIn(app.baseUrl(), People.ANN.username(), People.PASSWORD);
                assertThat(ann.page("/export/tests.csv")).isEqualTo(export);
                assertThat(ann.page("/sites")).contains("Typed later");
            }
        }
    }
}
