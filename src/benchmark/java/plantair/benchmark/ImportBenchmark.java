package plantair.benchmark;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.postgresql.PGConnection;

/**
 * Everything of one installation into an empty one, against PostgreSQL's COPY of the same tables into an empty schema. The
 * import looks through the file first, which does all of it and takes it back; both parts are told.
 */
public final class ImportBenchmark {

    private static final Logger LOG = System.getLogger("benchmark");

    /** Not in the zip: accounts, sessions, and what an installation makes for itself. */
    private static final Set<String> OWN = Set.of("account", "account_event", "flyway_schema_history");

    private ImportBenchmark() {}

    /**
     * Takes what the program {@code benchmark.few} exports into {@code benchmark.empty}; then the tables of the first
     * one's database into {@code benchmark.empty-database}, whose schema is there and which no program has open.
     */
    public static void main(String[] arguments) throws Exception {
        byte[] zip = Settings.visitor("few").bytes("/export/all.zip");
        Visitor visitor = Settings.visitor("empty");
        long start = System.nanoTime();
        String page = visitor.upload("/import", "all.zip", zip);
        await(visitor, page);
        double looked = seconds(start);
        start = System.nanoTime();
        visitor.send(page, Map.of());
        await(visitor, page);
        double taken = seconds(start);
        try (Connection source = Settings.database("database");
                Connection target = Settings.database("empty-database")) {
            Map<String, byte[]> tables = tables(source);
            start = System.nanoTime();
            long rows = copyIn(target, tables);
            double copied = seconds(start);
            LOG.log(Level.INFO, String.format(
                    "%d rows, zip of %.1f MB: looked through in %.1f s, taken in in %.1f s (%.0f rows/s), COPY %.2f s (%.0f"
                            + " rows/s); ratio %.3f, with looking through %.3f",
                    rows,
                    zip.length / 1e6,
                    looked,
                    taken,
                    rows / taken,
                    copied,
                    rows / copied,
                    copied / taken,
                    copied / (looked + taken)));
        }
    }

    /** Its page asks for itself again as long as it is under way. */
    private static void await(Visitor visitor, String page) throws IOException, InterruptedException {
        while (visitor.header(page, "Refresh")) {
            Thread.sleep(100);
        }
    }

    private static double seconds(long start) {
        return (System.nanoTime() - start) / 1e9;
    }

    /** Rows of each table, those that others refer to first. */
    private static Map<String, byte[]> tables(Connection source) throws SQLException, IOException {
        Map<String, byte[]> all = new LinkedHashMap<>();
        for (String table : inOrder(source)) {
            var rows = new ByteArrayOutputStream();
            source.unwrap(PGConnection.class).getCopyAPI().copyOut("copy " + table + " to stdout", rows);
            all.put(table, rows.toByteArray());
        }
        return all;
    }

    private static long copyIn(Connection target, Map<String, byte[]> tables) throws SQLException, IOException {
        target.setAutoCommit(false);
        long rows = 0;
        for (var table : tables.entrySet()) {
            rows += target.unwrap(PGConnection.class)
                    .getCopyAPI()
                    .copyIn("copy " + table.getKey() + " from stdin", new ByteArrayInputStream(table.getValue()));
        }
        target.commit();
        return rows;
    }

    private static List<String> inOrder(Connection source) throws SQLException {
        Map<String, Set<String>> needs = new LinkedHashMap<>();
        try (ResultSet tables = source.getMetaData().getTables(null, "public", "%", new String[] {"TABLE"})) {
            while (tables.next()) {
                String table = tables.getString("TABLE_NAME");
                if (!OWN.contains(table) && !table.startsWith("spring_session")) {
                    needs.put(table, new LinkedHashSet<>());
                }
            }
        }
        for (var table : needs.entrySet()) {
            try (ResultSet keys = source.getMetaData().getImportedKeys(null, "public", table.getKey())) {
                while (keys.next()) {
                    table.getValue().add(keys.getString("PKTABLE_NAME"));
                }
            }
            table.getValue().remove(table.getKey());
            table.getValue().retainAll(needs.keySet());
        }
        List<String> order = new ArrayList<>();
        while (order.size() < needs.size()) {
            needs.forEach((table, others) -> {
                if (!order.contains(table) && order.containsAll(others)) {
                    order.add(table);
                }
            });
        }
        return order;
    }
}
