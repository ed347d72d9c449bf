package plantair.export;

import static plantair.export.DataColumn.code;
import static plantair.export.DataColumn.id;
import static plantair.export.DataColumn.of;
import static plantair.export.DataColumn.reading;
import static plantair.export.DataColumn.text;

import java.util.List;
import plantair.instrument.CalibrationStatus;
import plantair.instrument.InstrumentKind;
import plantair.quantity.PressureUnit;
import plantair.quantity.Unit;
import plantair.runlog.DecimalMark;
import plantair.runlog.PressureReference;
import plantair.runlog.Separator;
import plantair.runlog.TextCode;
import plantair.runlog.TimeFormat;

/** What loggers saw of tests; their files lie beside these, each under its digest. */
final class LogTables {

    static final DataColumn LOG = id("logged_run_id", "logged_run_id", "the logged run, in logged_runs.csv");

    static final String OF_TESTS = "test_id in (select made.id from pump_up_test made where made.compressor_id = ?)";

    private LogTables() {}

    static DataFile runs() {
        return DataFile.of(
                        "logged_runs",
                        "logged_run",
                        "a run as a data logger saw it; its file is in the folder files of the zip, and logged_readings.csv"
                                + " is what follows from it",
                        RegisterFiles.BY_ID,
                        id("logged_run_id", "id", "number of the logged run"),
                        InstrumentFiles.SUBMISSION,
                        RecordFiles.OF_TEST,
                        text("file_name", "name of the file as it was sent"),
                        code(PaperFiles.DIGEST, "SHA-256 of its bytes, and the name of its file", PaperFiles::digest),
                        of(CellKind.ID, "byte_count", "byte_count", "how many bytes it has"),
                        code("text_code", "how its bytes stand for letters", TextCode.class),
                        code("separator", "what stands between columns", Separator.class),
                        code("decimal_mark", "the mark before decimals", DecimalMark.class),
                        of(CellKind.WHOLE, "skipped_lines", "lines at its top that hold no readings"),
                        of(CellKind.FLAG, "leave_out_unreadable", "whether lines that cannot be read are left out"),
                        of(CellKind.WHOLE, "day_column", "column of the day, from 1, where it stands apart")
                                .orEmpty(),
                        of(CellKind.WHOLE, "time_column", "column of the time, from 1"),
                        code("time_format", "how times are written", TimeFormat.class),
                        of(CellKind.WHOLE, "pressure_column", "column of the pressure, from 1"),
                        code("pressure_unit", "unit code of the pressure", LogTables::unit),
                        code("pressure_reference", "GAUGE or ABSOLUTE", PressureReference.class),
                        code("logger_kind", "kind of the instrument", InstrumentKind.class)
                                .orEmpty(),
                        id("logger_instrument_id", "logger_instrument_id", "its number in instruments.csv")
                                .orEmpty(),
                        text("logger_tag", "its tag").orEmpty(),
                        reading("logger_span", "its span", null).orEmpty(),
                        reading("logger_limit_percent", "its largest error in percent of span", null)
                                .orEmpty(),
                        reading("logger_division", "its smallest step", null).orEmpty(),
                        reading("logger_accuracy", "largest error of an instrument that is no gauge", null)
                                .orEmpty(),
                        of(CellKind.DAY, "logger_due_on", "last day of its calibration")
                                .orEmpty(),
                        code("logger_status", "its calibration on the day of the test", CalibrationStatus.class)
                                .orEmpty(),
                        RegisterFiles.NOTE,
                        InstrumentFiles.RECORDED_AT,
                        InstrumentFiles.RECORDED_BY)
                .ofMachine(OF_TESTS);
    }

    static DataFile withdrawals() {
        return DataFile.of(
                        "logged_run_withdrawals",
                        "logged_run_withdrawal",
                        "that a logged run was withdrawn; it stays on record",
                        List.of("logged_run_id"),
                        LOG,
                        InstrumentFiles.SUBMISSION,
                        of(CellKind.MOMENT, "withdrawn_at", "when, ISO 8601, UTC"),
                        text("withdrawn_by", "who"),
                        text("reason", "why"))
                .ofMachine("logged_run_id in (select run.id from logged_run run where run." + OF_TESTS + ")");
    }

    private static Unit unit(String cell) {
        return Unit.byCode(cell)
                .filter(PressureUnit.class::isInstance)
                .orElseThrow(() -> new IllegalArgumentException("no unit of pressure: " + cell));
    }
}
