package plantair.demo;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import org.flywaydb.core.Flyway;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The command that makes a group of plants for measuring, see docs/performance.md: brings the schema of an empty database up
 * to date, then fills it. Results, states and the chain of changes are made by the program itself at its next start.
 */
final class GroupMaker {

    private static final Logger LOG = LoggerFactory.getLogger(GroupMaker.class);

    private GroupMaker() {}

    /** Takes machines, tests, address of the database, user and, where there is one, password. */
    public static void main(String[] arguments) throws SQLException {
        int machines = Integer.parseInt(arguments[0]);
        long tests = Long.parseLong(arguments[1]);
        String password = arguments.length > 4 ? arguments[4] : "";
        Flyway.configure()
                .dataSource(arguments[2], arguments[3], password)
                .locations("classpath:db/migration")
                .load()
                .migrate();
        try (Connection connection = DriverManager.getConnection(arguments[2], arguments[3], password)) {
            make(connection, machines, tests);
        }
    }

    static void make(Connection connection, int machines, long tests) throws SQLException {
        connection.setAutoCommit(false);
        try (var statement = connection.createStatement();
                var sites = statement.executeQuery("select 1 from site")) {
            if (sites.next()) {
                throw new IllegalStateException("the database holds a plant already");
            }
        }
        long[] told = {0};
        new GroupPlant(new GroupRows(connection), machines, tests).make(done -> {
            if (done - told[0] >= tests / 100 || done == tests) {
                told[0] = done;
                LOG.info("{} of {} tests", done, tests);
            }
        });
    }
}
