package plantair.operation;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import plantair.testing.AppProcess;
import plantair.testing.Client;
import plantair.testing.OwnPostgres;

/** What watches the program while its database server is killed. */
final class DatabaseAwayTests {

    private static final String TOKEN = "fourteen-brown-owls-on-a-gate";

    /** Well below the ten seconds after which a connection is given up: nobody asked for one. */
    private static final Duration AT_ONCE = Duration.ofSeconds(5);

    private static final int TRIES = 8;

    /** One more than the pool has. */
    private static final int CONNECTIONS = 11;

    @TempDir
    private static Path folder;

    private static OwnPostgres server;
    private static AppProcess app;
    private static Client ann;

    @BeforeAll
    static void start() throws Exception {
        server = OwnPostgres.start(folder.resolve("server"));
        app = AppProcess.onDatabase(folder, server.jdbcUrl(), server.user(), "--plantair.metrics.token=" + TOKEN);
        ann = Client.first(app);
    }

    @AfterAll
    static void stop() {
        app.close();
        server.close();
    }

    @Test
    void isAliveAndTellsItsFiguresAndIsNotReady() throws Exception {
        String port = "--server.port=" + app.baseUrl().replaceFirst(".*:", "");
        assertThat(ann.cookie("SESSION")).as("is sent with each request").isPresent();
        assertThat(isAnsweredSoon("/actuator/health/readiness")).isTrue();
        assertThat(HealthCommand.run("health", port)).isZero();

        server.killHard();

        long begin = System.nanoTime();
        HttpResponse<String> alive = ann.get("/actuator/health/liveness");
        HttpResponse<String> figures = ann.get("/actuator/prometheus", "Authorization", "Bearer " + TOKEN);
        assertThat(Duration.ofNanos(System.nanoTime() - begin)).isLessThan(AT_ONCE);
        assertThat(alive.statusCode()).isEqualTo(200);
        assertThat(alive.body()).isEqualTo("{\"status\":\"UP\"}");
        assertThat(figures.body()).contains("hikaricp_connections");

        HttpResponse<String> ready = ann.get("/actuator/health/readiness");
        assertThat(ready.statusCode()).isEqualTo(503);
        assertThat(ready.body()).isEqualTo("{\"status\":\"DOWN\"}");
        assertThat(HealthCommand.run("health", port)).isEqualTo(1);

        HttpResponse<String> page = ann.get("/tests");
        assertThat(page.statusCode()).isEqualTo(503);
        assertThat(page.body())
                .contains(page.headers().firstValue("X-Request-Id").orElseThrow());

        server.startAgain();
        assertThat(ann.get("/actuator/health/readiness").statusCode()).isEqualTo(200);
    }

    /** An administrator of the server ends the connections while they are in use: that is no fault of the program. */
    @Test
    void isNoFaultWhenTheServerEndsItsConnections() {
        var database = new JdbcTemplate(new DriverManagerDataSource(server.jdbcUrl(), server.user(), ""));
        Set<Integer> answers = new HashSet<>();
        for (int i = 0; i < TRIES; i++) {
            ann.get("/tests"); // a connection that was in use just now is not asked whether it lives
            database.queryForList("select pg_terminate_backend(pid) from pg_stat_activity"
                    + " where datname = current_database() and pid <> pg_backend_pid()");
            answers.add(ann.get("/tests").statusCode());
        }

        assertThat(answers).isSubsetOf(200, 503);
        assertThat(isAnsweredSoon("/tests")).isTrue();
    }

    /** Each answer throws one dead connection out of the pool, whichever test left it there. */
    private static boolean isAnsweredSoon(String path) {
        return IntStream.rangeClosed(1, CONNECTIONS).anyMatch(i -> ann.get(path).statusCode() == 200);
    }
}
