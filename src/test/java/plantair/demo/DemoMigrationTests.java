package plantair.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.UUID;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.JdbcTemplate;
import plantair.testing.OnH2;
import plantair.testing.PostgresServer;

/** The demo plant among the migrations, each time in a new database. */
abstract class DemoMigrationTests {

    private static final String SCHEMA = "demo_check";

    @TempDir
    private Path directory;

    private JdbcTemplate jdbc;

    abstract FluentConfiguration emptyDatabase();

    @BeforeEach
    void migrate() throws IOException {
        Files.copy(DemoPlantSql.FILE, directory.resolve(DemoPlantSql.FILE.getFileName()));
        flyway().clean();
        flyway().migrate();
        jdbc = new JdbcTemplate(flyway().getConfiguration().getDataSource());
    }

    @AfterEach
    void clean() {
        flyway().clean();
    }

    @Test
    void loadsThePlant() {
        assertThat(count("site")).isEqualTo(2);
        assertThat(count("pump_up_test")).isEqualTo(DemoPlant.tests().size());
        assertThat(count("pump_up_result")).isZero();
    }

    @Test
    void letsLaterVersionsOfTheSchemaFollow() throws IOException {
        Files.writeString(directory.resolve("V900__later.sql"), "create table later (id bigint);");

        assertThat(flyway().migrate().migrationsExecuted).isEqualTo(1);
        assertThat(count("later")).isZero();
        assertThat(flyway().validateWithResult().validationSuccessful).isTrue();
    }

    @Test
    void leavesAPlantAloneThatIsNotEmptyWhenTheFileChanges() throws IOException {
        jdbc.update("update " + SCHEMA + ".site set note = 'changed by somebody'");
        Path file = directory.resolve(DemoPlantSql.FILE.getFileName());
        Files.writeString(file, "-- another release\n" + Files.readString(file));
        int changes = count("change_record");

        assertThat(flyway().migrate().migrationsExecuted).isEqualTo(1);
        assertThat(count("pump_up_test")).isEqualTo(DemoPlant.tests().size());
        assertThat(count("change_record")).isEqualTo(changes);
        assertThat(jdbc.queryForList("select distinct note from " + SCHEMA + ".site", String.class))
                .containsExactly("changed by somebody");
    }

    @Test
    void leavesTheNextIdsFree() {
        jdbc.update("insert into " + SCHEMA
                + ".site (name, zone, elevation, note, version) values ('new', 'UTC', '1 m', '', 0)");

        assertThat(jdbc.queryForObject("select max(id) from " + SCHEMA + ".site", Long.class))
                .isEqualTo(3);
    }

    private Flyway flyway() {
        return emptyDatabase()
                .schemas(SCHEMA)
                .locations("filesystem:db/migration", "filesystem:" + directory)
                .cleanDisabled(false)
                .load();
    }

    private int count(String table) {
        Integer count = jdbc.queryForObject("select count(*) from " + SCHEMA + "." + table, Integer.class);
        return count == null ? 0 : count;
    }
}

final class DemoMigrationOnH2Tests extends DemoMigrationTests {

    private final String url = OnH2.URL.replace("mem:plantair", "mem:" + UUID.randomUUID());

    @Override
    FluentConfiguration emptyDatabase() {
        return Flyway.configure().dataSource(url, "sa", "");
    }
}

final class DemoMigrationOnPostgresTests extends DemoMigrationTests {

    @Override
    FluentConfiguration emptyDatabase() {
        PostgresServer server = PostgresServer.ofThisRun();
        return Flyway.configure().dataSource(server.jdbcUrl(), server.username(), server.password());
    }
}
