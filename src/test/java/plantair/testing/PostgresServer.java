package plantair.testing;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.testcontainers.postgresql.PostgreSQLContainer;

/**
 * The PostgreSQL server of this test run, started once: the one named by TEST_DB_URL (with TEST_DB_USER and
 * TEST_DB_PASSWORD; its tables are emptied!), else a container where a Docker engine answers, else an embedded server
 * that needs neither Docker nor an installation. The last two stop with the JVM.
 */
public record PostgresServer(String jdbcUrl, String username, String password) implements JdbcConnectionDetails {

    private static final Logger LOG = LoggerFactory.getLogger(PostgresServer.class);

    private static final class Holder {
        private static final PostgresServer SERVER = choose(System.getenv());
    }

    public static PostgresServer ofThisRun() {
        return Holder.SERVER;
    }

    private static PostgresServer choose(Map<String, String> environment) {
        String url = environment.get("TEST_DB_URL");
        PostgresServer server;
        if (url != null) {
            server = new PostgresServer(
                    url,
                    environment.getOrDefault("TEST_DB_USER", "postgres"),
                    environment.getOrDefault("TEST_DB_PASSWORD", ""));
        } else if (DockerEngine.answers(environment.get("DOCKER_HOST"))) {
            server = inContainer();
        } else {
            server = embedded();
        }
        LOG.info("PostgreSQL for the tests: {}", server.jdbcUrl);
        return server;
    }

    @SuppressWarnings("resource") // stopped with the JVM
    private static PostgresServer inContainer() {
        PostgreSQLContainer container = new PostgreSQLContainer("postgres:18");
        container.start();
        return new PostgresServer(container.getJdbcUrl(), container.getUsername(), container.getPassword());
    }

    @SuppressWarnings("resource") // stopped with the JVM
    private static PostgresServer embedded() {
        try {
            String url = EmbeddedPostgres.builder().start().getJdbcUrl("postgres", "postgres");
            return new PostgresServer(url, "postgres", "");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String getJdbcUrl() {
        return jdbcUrl;
    }

    @Override
    public String getUsername() {
        return username;
    }

    @Override
    public String getPassword() {
        return password;
    }
}
