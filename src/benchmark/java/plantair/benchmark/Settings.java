package plantair.benchmark;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;

/** What the Maven profile hands over: addresses of running programs, and of the database under one of them. */
final class Settings {

    private Settings() {}

    /**
     * A setting that must be there.
     *
     * @param name as in {@code -Dbenchmark.name=…}
     */
    static String of(String name) {
        String value = or(name, "-");
        if (value.equals("-")) {
            throw new IllegalArgumentException("-Dbenchmark." + name + "=… is missing; docs/performance.md");
        }
        return value;
    }

    /** A setting that may be left out, which the profile hands over as a dash. */
    static String or(String name, String usual) {
        String value = System.getProperty("benchmark." + name, "-");
        return value.equals("-") ? usual : value;
    }

    /** Somebody signed in at the program of that setting. */
    static Visitor visitor(String program) throws Exception {
        return Visitor.signedIn(of(program), of("user"), of("password"));
    }

    /** A connection of its own to the PostgreSQL database of that setting. */
    static Connection database(String name) throws SQLException {
        return DriverManager.getConnection(
                of(name), of("database-user"), System.getProperty("benchmark.database-password", ""));
    }
}
