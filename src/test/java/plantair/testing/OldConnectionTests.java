package plantair.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.zaxxer.hikari.HikariDataSource;
import java.sql.DriverManager;
import java.sql.SQLException;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Why no connection is closed for its age on H2: the one that made the rules of a table is needed as long as it is open. */
@OnH2
final class OldConnectionTests {

    private static final String URL = "jdbc:h2:mem:old;DB_CLOSE_DELAY=-1";

    @Test
    void areNeverClosed(@Autowired HikariDataSource pool) {
        assertThat(pool.getMaxLifetime()).isZero();
        assertThat(pool.getMinimumIdle()).isEqualTo(pool.getMaximumPoolSize());
    }

    /** When this fails, H2 has learned to do without, and the setting can go. */
    @Test
    void areMissedByH2() throws SQLException {
        try (var other = DriverManager.getConnection(URL);
                var insert = other.createStatement()) {
            try (var one = DriverManager.getConnection(URL);
                    var create = one.createStatement()) {
                create.execute("create table t (kind varchar(9) check (kind in ('A', 'B')))");
                insert.execute("insert into t values ('A')");
            }

            assertThatThrownBy(() -> insert.execute("insert into t values ('B')"))
                    .isInstanceOf(SQLException.class)
                    .hasMessageContaining("Check constraint invalid");
        }
    }
}
