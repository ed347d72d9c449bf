package plantair.testing;

import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;

/** Points the data source at the PostgreSQL server of this test run. */
@TestConfiguration(proxyBeanMethods = false)
class PostgresConfiguration {

    @Bean
    JdbcConnectionDetails postgres() {
        return PostgresServer.ofThisRun();
    }
}
