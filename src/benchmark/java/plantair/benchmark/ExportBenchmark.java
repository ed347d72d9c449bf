package plantair.benchmark;

import java.io.IOException;
import java.io.OutputStream;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Arrays;
import org.postgresql.PGConnection;

/**
 * The CSV file of tests against PostgreSQL's COPY of the same rows, in turn: rows a second, and the ratio. COPY sends what the
 * file is made of, the run, its test and the whole result.
 */
public final class ExportBenchmark {

    private static final Logger LOG = System.getLogger("benchmark");
    /** Until what the file asks of the program has been compiled for good. */
    private static final int WARM = 5;

    private static final int TIMES = 7;

    private ExportBenchmark() {}

    /** Runs it on the program {@code benchmark.many} and its database. */
    public static void main(String[] arguments) throws Exception {
        Visitor visitor = Settings.visitor("many");
        String from = Settings.or("from", "2026-01-01");
        String to = Settings.or("to", "2026-02-28");
        try (Connection connection = Settings.database("database")) {
            double[] file = new double[TIMES];
            double[] copy = new double[TIMES];
            for (int i = -WARM; i < TIMES; i++) {
                double fileRate = file(visitor, from, to);
                double copyRate = copy(connection, from, to);
                if (i >= 0) {
                    file[i] = fileRate;
                    copy[i] = copyRate;
                }
            }
            Arrays.sort(file);
            Arrays.sort(copy);
            double ratio = file[TIMES / 2] / copy[TIMES / 2];
            LOG.log(Level.INFO, "median: {0}", String.format(
                    "file %.0f rows/s, COPY %.0f rows/s, ratio %.2f", file[TIMES / 2], copy[TIMES / 2], ratio));
        }
    }

    private static double file(Visitor visitor, String from, String to) throws IOException, InterruptedException {
        long start = System.nanoTime();
        long lines = visitor.lines("/export/tests.csv?from=" + from + "&to=" + to);
        return rate("file", lines - 1, start);
    }

    private static double copy(Connection connection, String from, String to) throws SQLException, IOException {
        String sql = "copy (select t.*, r.*, p.* from pump_up_test t join pump_up_run r on r.test_id = t.id"
                + " left join pump_up_result p on p.test_id = t.id"
                + " where (t.performed_at at time zone t.zone)::date between '" + from + "' and '" + to + "'"
                + " and t.performed_at between date '" + from + "' - 1 and date '" + to + "' + 2"
                + " order by t.id, r.position) to stdout (format csv, header)";
        long start = System.nanoTime();
        long rows = connection.unwrap(PGConnection.class).getCopyAPI().copyOut(sql, OutputStream.nullOutputStream());
        return rate("COPY", rows, start);
    }

    private static double rate(String what, long rows, long start) {
        double seconds = (System.nanoTime() - start) / 1e9;
        LOG.log(Level.INFO, "{0}: {1}", what, String.format("%d rows in %.2f s", rows, seconds));
        return rows / seconds;
    }
}
