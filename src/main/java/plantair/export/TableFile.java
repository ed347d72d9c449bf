package plantair.export;

import java.io.IOException;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Service;

/** Writes a table as CSV, a batch at a time, so that a long table takes no more room than a short one. */
@Service
public class TableFile {

    private static final int BATCH = 500;

    private final JdbcTemplate jdbc;

    TableFile(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** Writes header and rows in the order of their key. */
    public void write(DataFile file, Appendable out) throws IOException {
        write(file, Optional.empty(), out);
    }

    /** Writes header and the rows that belong to a compressor. */
    void writeOfMachine(DataFile file, long compressorId, Appendable out) throws IOException {
        write(file, Optional.of(compressorId), out);
    }

    private void write(DataFile file, Optional<Long> compressorId, Appendable out) throws IOException {
        var text = new StringBuilder();
        CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180);
        printer.printRecord(file.headers());
        Batch batch = next(file, compressorId, Collections.nCopies(file.key().size(), -1L));
        while (!batch.rows.isEmpty()) {
            for (List<String> row : batch.rows) {
                printer.printRecord(row);
            }
            out.append(text);
            text.setLength(0);
            batch = batch.rows.size() < BATCH ? Batch.NONE : next(file, compressorId, batch.last);
        }
        out.append(text);
    }

    private record Batch(List<List<String>> rows, List<Long> last) {

        static final Batch NONE = new Batch(List.of(), List.of());
    }

    private Batch next(DataFile file, Optional<Long> compressorId, List<Long> after) {
        List<List<String>> rows = new ArrayList<>();
        List<Long> last = new ArrayList<>(after);
        jdbc.query(
                sql(file, compressorId.isPresent()),
                row -> {
                    rows.add(cells(file, row));
                    for (int i = 0; i < last.size(); i++) {
                        last.set(i, row.getLong(file.key().get(i)));
                    }
                },
                parameters(file, compressorId.orElse(null), after).toArray());
        return new Batch(rows, last);
    }

    /** Says "first key ≥" beside the whole condition, so that an index on it serves. */
    private static String sql(DataFile file, boolean ofMachine) {
        String first = file.key().get(0);
        String after = file.key().size() == 1
                ? first + " > ?"
                : first + " >= ? and (" + first + " > ? or " + file.key().get(1) + " > ?)";
        return "select * from " + file.table() + " where " + after
                + (ofMachine ? " and (" + file.ofMachine() + ")" : "")
                + " order by " + String.join(", ", file.key()) + " fetch first " + BATCH + " rows only";
    }

    private static List<Long> parameters(DataFile file, @Nullable Long compressorId, List<Long> after) {
        List<Long> parameters = new ArrayList<>(after.subList(0, 1));
        if (after.size() == 2) {
            parameters.addAll(after);
        }
        if (compressorId != null) {
            Stream.of(Optional.ofNullable(file.ofMachine()).orElseThrow().split(""))
                    .filter("?"::equals)
                    .forEach(mark -> parameters.add(compressorId));
        }
        return parameters;
    }

    private static List<String> cells(DataFile file, ResultSet row) throws SQLException {
        List<String> cells = new ArrayList<>();
        for (DataColumn column : file.columns()) {
            column.cells(row).forEach(cells::add);
        }
        return cells;
    }
}
