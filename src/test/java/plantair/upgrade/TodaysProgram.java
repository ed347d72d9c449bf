package plantair.upgrade;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.context.TypeExcludeFilter;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Import;
import org.springframework.core.type.classreading.MetadataReader;
import org.springframework.core.type.classreading.MetadataReaderFactory;
import plantair.PlantAirApplication;
import plantair.testing.Client;
import plantair.testing.FixedClock;

/** The whole application as an upgrade starts it on a database that is there, in this JVM and on a free port. */
final class TodaysProgram implements AutoCloseable {

    private static final String PASSWORD = "two lamps beside the weir";

    private final ConfigurableApplicationContext context;

    private TodaysProgram(ConfigurableApplicationContext context) {
        this.context = context;
    }

    static TodaysProgram startOn(Place place) {
        var application = new SpringApplication(PlantAirApplication.class, AtNoon.class);
        application.setRegisterShutdownHook(false);
        application.addInitializers(
                fresh -> fresh.getBeanFactory().registerSingleton("testsLeftOut", new TestsLeftOut()));
        return new TodaysProgram(application.run(
                "--spring.profiles.active=demo",
                "--spring.datasource.url=" + place.url(),
                "--spring.datasource.username=" + place.user(),
                "--spring.datasource.password=" + place.password(),
                "--server.port=0",
                "--plantair.demo-password=" + PASSWORD,
                "--plantair.bcrypt-strength=4",
                "--spring.main.lazy-initialization=true", // one start after the other; what is not asked for need not
                // be made
                "--spring.data.jpa.repositories.bootstrap-mode=lazy",
                "--plantair.backup.directory=target/backups",
                "--spring.task.scheduling.shutdown.await-termination=false"));
    }

    /** Where a database is. */
    record Place(String url, String user, String password) {}

    <T> T part(Class<T> type) {
        return context.getBean(type);
    }

    Connection connection() throws SQLException {
        return part(DataSource.class).getConnection();
    }

    /** The administrator of the demo plant. */
    Client visitor() {
        int port = ((WebServerApplicationContext) context).getWebServer().getPort();
        return Client.signedIn("http://127.0.0.1:" + port, "demo-administrator", PASSWORD);
    }

    @Override
    public void close() {
        context.close();
    }

    /** The day of all tests, so that what is due that day is. */
    @TestConfiguration(proxyBeanMethods = false)
    @Import(FixedClock.class)
    static class AtNoon {}

    /** Scanning the package of the application would else find parts of the tests. */
    private static final class TestsLeftOut extends TypeExcludeFilter {

        private static final String TESTS = "/test-classes/";

        @Override
        public boolean match(MetadataReader type, MetadataReaderFactory factory) {
            try {
                return type.getResource().getURL().getPath().contains(TESTS);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof TestsLeftOut;
        }

        @Override
        public int hashCode() {
            return TESTS.hashCode();
        }
    }
}
