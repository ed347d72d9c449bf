package plantair.export;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Component;
import plantair.runlog.LogFiles;
import plantair.runlog.LogReadings;
import plantair.runlog.LoggedRun;
import plantair.runlog.LoggedRuns;
import plantair.testrecord.PumpUpTests;
import plantair.testrecord.ResultProjection;

/** The readings of all logged runs, as they stand in their files and in SI, a run at a time. Derived; an import passes it by. */
@Component
class LogReadingsFile {

    /** Name of the file, without {@code .csv}. */
    static final String NAME = "logged_readings";

    private static final List<DictionaryLine> COLUMNS = List.of(
            DictionaryLine.of(
                    NAME, "", "a reading of a logged run; derived from the file of the logger, which is beside it"),
            DictionaryLine.of(NAME, "logged_run_id", "the logged run, in logged_runs.csv"),
            DictionaryLine.of(NAME, "line", "line of the logger’s file, from 1"),
            DictionaryLine.of(NAME, "time", "time as it stands there"),
            DictionaryLine.of(NAME, "pressure", "pressure as it stands there"),
            DictionaryLine.of(NAME, "time_s", "time from the first reading, in SI"),
            DictionaryLine.of(NAME, "pressure_pa", "gauge pressure as the logger has it, in SI"));

    private final LoggedRuns runs;
    private final LogFiles files;
    private final PumpUpTests tests;

    LogReadingsFile(LoggedRuns runs, LogFiles files, PumpUpTests tests) {
        this.runs = runs;
        this.files = files;
        this.tests = tests;
    }

    /** Its lines in the data dictionary. */
    static Stream<DictionaryLine> dictionary() {
        return COLUMNS.stream();
    }

    void write(Appendable out) throws IOException {
        CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180);
        printer.printRecord(COLUMNS.stream().skip(1).map(DictionaryLine::column));
        List<LoggedRun> next = runs.findByIdGreaterThanOrderById(0, Limit.of(1));
        while (!next.isEmpty()) {
            write(next.get(0), printer);
            next = runs.findByIdGreaterThanOrderById(next.get(0).id(), Limit.of(1));
        }
        printer.flush();
    }

    private void write(LoggedRun run, CSVPrinter printer) throws IOException {
        var station =
                ResultProjection.stationPressure(tests.findById(run.testId()).orElseThrow());
        for (LogReadings.Row row : files.read(run, station).rows()) {
            printer.printRecord(
                    run.id(),
                    row.line(),
                    SafeText.of(row.time()),
                    SafeText.of(row.pressure()),
                    TestColumn.plain(row.point().seconds()),
                    TestColumn.plain(row.point().pressure().pascals()));
        }
    }
}
