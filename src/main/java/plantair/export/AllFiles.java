package plantair.export;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;
import plantair.attachment.ContentFiles;

/** Everything as one zip of CSV files with their data dictionary, on one view of the database. */
@Service
public class AllFiles {

    /** The data dictionary, without {@code .csv}. */
    public static final String DICTIONARY = "dictionary";

    /** Tells a spreadsheet that a file is UTF-8. */
    public static final char BYTE_ORDER_MARK = '\uFEFF';

    private static final ExportFilter ALL_TESTS = new ExportFilter(0, 0, null, null);

    private final TestFile tests;
    private final TableFile tables;
    private final LogReadingsFile logs;
    private final ContentFiles contents;
    private final Clock clock;

    AllFiles(TestFile tests, TableFile tables, LogReadingsFile logs, ContentFiles contents, Clock clock) {
        this.logs = logs;
        this.contents = contents;
        this.tests = tests;
        this.tables = tables;
        this.clock = clock;
    }

    /**
     * Writes the zip.
     *
     * @throws IOException when the reader has gone away
     */
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public void write(OutputStream out) throws IOException {
        var zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
        add(zip, DICTIONARY, AllFiles::writeDictionary);
        for (DataFile file : DataFiles.BEFORE_TESTS) {
            add(zip, file.name(), text -> tables.write(file, text));
        }
        add(zip, TestFile.NAME, text -> tests.write(ALL_TESTS, text));
        for (DataFile file : DataFiles.AFTER_TESTS) {
            add(zip, file.name(), text -> tables.write(file, text));
        }
        add(zip, LogReadingsFile.NAME, logs::write);
        contents.addAll(zip);
        zip.finish();
    }

    /** Writes the data dictionary. */
    public static void writeDictionary(Appendable out) throws IOException {
        CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180);
        printer.printRecord("file", "column", "meaning", "unit");
        for (DictionaryLine line : DictionaryLine.all()) {
            printer.printRecord(line.file(), line.column(), line.meaning(), line.unit());
        }
        printer.flush();
    }

    /** What writes the text of a file. */
    interface Text {

        void write(Appendable out) throws IOException;
    }

    /** Adds a CSV file to a zip. */
    void add(ZipOutputStream zip, String name, Text text) throws IOException {
        var entry = new ZipEntry(name + ".csv");
        entry.setTimeLocal(LocalDateTime.ofInstant(clock.instant(), clock.getZone()));
        zip.putNextEntry(entry);
        Writer out = new BufferedWriter(new OutputStreamWriter(zip, StandardCharsets.UTF_8));
        out.write(BYTE_ORDER_MARK);
        text.write(out);
        out.flush();
        zip.closeEntry();
    }
}
