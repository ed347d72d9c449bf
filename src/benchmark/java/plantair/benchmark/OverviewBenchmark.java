package plantair.benchmark;

import java.io.IOException;
import java.io.InputStream;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * The overview against the bare SQL of what it shows, in turn: the machines of its first page, how many there are, the sites,
 * and all that is due. The SQL is asked over one connection and every row and column of it read; the page keeps the order of
 * the machines and what is due until somebody changes something, finds out who asks, and is written as HTML.
 */
public final class OverviewBenchmark {

    private static final Logger LOG = System.getLogger("benchmark");
    private static final int WARM = 100;
    private static final int MEASURED = 200;

    private static final String MACHINES = "from compressor c join site s on s.id = c.site_id"
            + " left join machine_state m on m.compressor_id = c.id where c.in_service = true"
            + " and coalesce(m.standing, 'NOT_KNOWN') in ('NOT_KNOWN', 'OK',"
            + " 'CANNOT_BE_TOLD', 'REPEAT', 'WATCH', 'PLAN', 'ACT')";

    private OverviewBenchmark() {}

    /** Runs it on the program {@code benchmark.many} and its database. */
    public static void main(String[] arguments) throws Exception {
        Visitor visitor = Settings.visitor("many");
        List<String> questions = List.of(
                "select c.id, c.tag, s.name, c.kind, c.in_service, m.* " + MACHINES
                        + " order by c.in_service desc, coalesce(m.rank_number, 1000), coalesce(m.part, 1.0), s.name, c.tag,"
                        + " c.id fetch first 25 rows only",
                "select count(*) " + MACHINES,
                "select * from site order by name",
                due());
        try (Connection connection = Settings.database("database")) {
            for (int i = 0; i < WARM; i++) {
                visitor.millis("/");
                ask(connection, questions);
            }
            double[] page = new double[MEASURED];
            double[] sql = new double[MEASURED];
            for (int i = 0; i < MEASURED; i++) {
                page[i] = visitor.millis("/");
                sql[i] = ask(connection, questions);
            }
            Arrays.sort(page);
            Arrays.sort(sql);
            LOG.log(Level.INFO, String.format(
                    "median: page %.1f ms, its SQL %.1f ms, ratio %.2f",
                    page[MEASURED / 2], sql[MEASURED / 2], page[MEASURED / 2] / sql[MEASURED / 2]));
        }
    }

    private static String due() throws IOException {
        try (InputStream sql = OverviewBenchmark.class.getResourceAsStream("/due/entries.sql")) {
            return new String(Objects.requireNonNull(sql).readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static double ask(Connection connection, List<String> questions) throws SQLException {
        long start = System.nanoTime();
        try (Statement statement = connection.createStatement()) {
            for (String question : questions) {
                read(statement.executeQuery(question));
            }
        }
        return (System.nanoTime() - start) / 1e6;
    }

    private static void read(ResultSet rows) throws SQLException {
        int columns = rows.getMetaData().getColumnCount();
        while (rows.next()) {
            for (int column = 1; column <= columns; column++) {
                rows.getObject(column);
            }
        }
    }
}
