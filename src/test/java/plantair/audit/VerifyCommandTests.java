package plantair.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.core.io.ClassPathResource;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import org.springframework.jdbc.datasource.init.ResourceDatabasePopulator;
import plantair.testing.AppProcess;

/** The command of an administrator, as a process of its own, on a plant that was recorded before there was a chain. */
final class VerifyCommandTests {

    /** Three lines of the log, and one for each of receiver, pipe piece and test, which had none. */
    private static final String BEGUN = "Began the chain of changes with 6 lines";

    private static final String SOUND = "Every record is as it was recorded";

    @TempDir
    private Path directory;

    private JdbcTemplate database() {
        return new JdbcTemplate(new DriverManagerDataSource(
                "jdbc:h2:" + directory.resolve("plant-air").toAbsolutePath()
                        + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH",
                "sa",
                ""));
    }

    private void recordByTheSchemaOf(String version) {
        var source = database().getDataSource();
        Flyway.configure()
                .dataSource(source)
                .locations("filesystem:db/migration")
                .target(version)
                .load()
                .migrate();
        new ResourceDatabasePopulator(new ClassPathResource("upgrade/v5_plant.sql")).execute(source);
    }

    private AppProcess.Ended verify() {
        return AppProcess.runOnH2File(directory, "verify");
    }

    @Test
    void beginsTheChainOnceAndKeepsFindingWhatCameInBesideIt() {
        recordByTheSchemaOf("5");

        AppProcess.Ended first = verify();
        assertThat(first.log()).contains(BEGUN, SOUND, "Read 6 changes and 5 records");
        assertThat(first.status()).isZero();

        AppProcess.Ended second = verify();
        assertThat(second.log()).contains(SOUND, "Read 6 changes and 5 records").doesNotContain("Began");
        assertThat(second.status()).isZero();

        database()
                .update("insert into receiver (site_id, tag, volume, volume_known_by, note, in_service, version)"
                        + " values (1, 'R-2', '80 [gal_us]', 'PLATE', '', true, 0)");
        database().update("update chain_end set begun = false");
        AppProcess.Ended third = verify();
        assertThat(third.log()).contains("RECORD_WITHOUT_LINE RECEIVER 2").doesNotContain(SOUND, "Began");
        assertThat(third.status()).isEqualTo(3);
        assertThat(verify().status())
                .as("a fault stays a fault after a restart")
                .isEqualTo(3);
    }
}
