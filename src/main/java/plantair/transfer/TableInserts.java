package plantair.transfer;

import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.JdbcTemplate;
import plantair.export.DataColumn;
import plantair.export.DataFile;

/** Puts rows into a table with the numbers that they have. */
final class TableInserts {

    private static final int BATCH = 500;

    private final JdbcTemplate jdbc;
    private final DataFile file;
    private final String sql;
    private final List<List<@Nullable Object>> rows = new ArrayList<>();
    private long firstLine;
    private long lastLine;

    TableInserts(JdbcTemplate jdbc, DataFile file) {
        this.jdbc = jdbc;
        this.file = file;
        this.sql = "insert into " + file.table() + " ("
                + file.columns().stream().map(DataColumn::column).collect(Collectors.joining(", ")) + ") values ("
                + file.columns().stream().map(column -> "?").collect(Collectors.joining(", ")) + ")";
    }

    void add(long line, List<@Nullable Object> values) {
        if (rows.isEmpty()) {
            firstLine = line;
        }
        lastLine = line;
        rows.add(values);
        if (rows.size() == BATCH) {
            send();
        }
    }

    /**
     * Sends what is not yet in the database.
     *
     * @throws RefusedRows when the database does not take them
     */
    void send() {
        try {
            jdbc.batchUpdate(sql, rows, BATCH, this::set);
            rows.clear();
        } catch (DataAccessException refused) {
            throw new RefusedRows(UnpackedZip.csv(file.name()), firstLine, lastLine, refused);
        }
    }

    private void set(PreparedStatement statement, List<@Nullable Object> row) throws SQLException {
        for (int i = 0; i < row.size(); i++) {
            Object value = row.get(i);
            if (value == null) {
                statement.setNull(i + 1, file.columns().get(i).sqlType());
            } else {
                statement.setObject(i + 1, value);
            }
        }
    }

    /** Rows that the database does not take: they contradict each other or are too long. */
    static final class RefusedRows extends RuntimeException {

        private static final long serialVersionUID = 1;

        private final String file;
        private final long firstLine;
        private final long lastLine;

        RefusedRows(String file, long firstLine, long lastLine, DataAccessException cause) {
            super(file, cause);
            this.file = file;
            this.firstLine = firstLine;
            this.lastLine = lastLine;
        }

        void tell(Remarks problems) {
            problems.add(file, firstLine, "", "import.refused", firstLine, lastLine);
        }
    }
}
