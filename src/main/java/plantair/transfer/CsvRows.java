package plantair.transfer;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads a CSV file row by row; what is no CSV becomes a remark and ends the reading. */
final class CsvRows {

    private static final int MOST_COLUMNS = 500;
    private static final int LONGEST_CELL = 25_000;
    private static final int LOOK_AHEAD = 65_536;
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private final String file;
    private final Remarks problems;
    private List<String> header = List.of();

    CsvRows(String file, Remarks problems) {
        this.file = file;
        this.problems = problems;
    }

    /** The names of the columns, once reading began. */
    List<String> header() {
        return header;
    }

    /** Reads all rows that are not blank. */
    void read(InputStream in, Consumer<Row> rows) {
        // the decoder of a charset name replaces what is no UTF-8; this one refuses it
        Reader strict = new InputStreamReader(in, StandardCharsets.UTF_8.newDecoder());
        long line = 1;
        try (BufferedReader text = new BufferedReader(strict, LOOK_AHEAD);
                CSVParser parser = CSVParser.parse(text, format(text))) {
            Iterator<CSVRecord> records = parser.iterator();
            while (records.hasNext()) {
                CSVRecord record = records.next();
                if (header.isEmpty()) {
                    readHeader(record);
                } else if (!isBlank(record)) {
                    row(record, line, rows);
                }
                line = parser.getCurrentLineNumber() + 1;
            }
            if (header.isEmpty()) {
                problems.add(file, 1, "", "import.noHeader");
            }
        } catch (CharacterCodingException notUtf8) {
            problems.add(file, line, "", "import.notUtf8");
        } catch (UncheckedIOException broken) {
            boolean coding = broken.getCause() instanceof CharacterCodingException;
            problems.add(file, line, "", coding ? "import.notUtf8" : "import.quotes");
        } catch (IOException | IllegalStateException broken) {
            problems.add(file, line, "", "import.quotes");
        }
    }

    /** The mark at the start is skipped; the sign that stands most often in the first line parts the cells. */
    private static CSVFormat format(BufferedReader text) throws IOException {
        text.mark(1);
        if (text.read() != BYTE_ORDER_MARK) {
            text.reset();
        }
        text.mark(LOOK_AHEAD);
        char[] start = new char[LOOK_AHEAD / 2];
        int length = Math.max(0, text.read(start));
        text.reset();
        String first = new String(start, 0, length).split("[\r\n]", 2)[0];
        char delimiter = ',';
        for (char other : new char[] {';', '\t'}) {
            if (count(first, other) > count(first, delimiter)) {
                delimiter = other;
            }
        }
        return CSVFormat.RFC4180.builder().setDelimiter(delimiter).get();
    }

    private static long count(String text, char sign) {
        return text.chars().filter(c -> c == sign).count();
    }

    private static boolean isBlank(CSVRecord record) {
        return record.stream().allMatch(String::isBlank);
    }

    private void readHeader(CSVRecord record) {
        List<String> names = new ArrayList<>();
        for (String cell : record) {
            String name = cell.strip().toLowerCase(Locale.ROOT).replace(' ', '_');
            if (!name.isEmpty() && names.contains(name)) {
                problems.add(file, 1, name, "import.twice", name);
            }
            names.add(name);
        }
        if (names.size() > MOST_COLUMNS) {
            problems.add(file, 1, "", "import.tooManyColumns", MOST_COLUMNS);
        }
        header = List.copyOf(names);
    }

    private void row(CSVRecord record, long line, Consumer<Row> rows) {
        Map<String, String> cells = new HashMap<>();
        for (int i = 0; i < record.size(); i++) {
            String cell = record.get(i);
            String column = i < header.size() ? header.get(i) : "";
            if (cell.length() > LONGEST_CELL) {
                problems.add(file, line, column, "import.tooLong", LONGEST_CELL);
            } else if (column.isEmpty() && !cell.isBlank()) {
                problems.add(file, line, "", "import.noColumn", cell);
            } else if (cell.indexOf('\0') >= 0) {
                problems.add(file, line, column, "text.control");
            } else {
                cells.put(column, cell);
            }
        }
        rows.accept(new Row(file, line, cells));
    }
}
