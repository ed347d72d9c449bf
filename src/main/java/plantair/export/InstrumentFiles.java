package plantair.export;

import static plantair.export.DataColumn.code;
import static plantair.export.DataColumn.id;
import static plantair.export.DataColumn.of;
import static plantair.export.DataColumn.reading;
import static plantair.export.DataColumn.text;

import java.util.List;
import java.util.stream.Stream;
import plantair.instrument.AccuracyGrade;
import plantair.instrument.InstrumentKind;

/** The instruments, their calibrations and what was found in them. */
final class InstrumentFiles {

    static final DataColumn SUBMISSION =
            of(CellKind.KEY, "submission", "made when it was sent in; the same record is never taken in twice");
    static final DataColumn RECORDED_AT = of(CellKind.MOMENT, "recorded_at", "when it was recorded, ISO 8601, UTC");
    static final DataColumn RECORDED_BY = text("recorded_by", "who recorded it");

    private static final String USED = " in (select used.instrument_id from pump_up_instrument used"
            + " join pump_up_test made on made.id = used.test_id where made.compressor_id = ?)";

    private InstrumentFiles() {}

    static Stream<DataFile> all() {
        return Stream.of(instruments(), calibrations(), points());
    }

    private static DataFile instruments() {
        return DataFile.of(
                        "instruments",
                        "instrument",
                        "an instrument of the plant",
                        RegisterFiles.BY_ID,
                        id("instrument_id", "id", "number of the instrument"),
                        text("tag", "how the plant calls it"),
                        code("kind", "what it measures", InstrumentKind.class),
                        id(
                                        "site_id",
                                        "site_id",
                                        "where it is kept, in sites.csv; empty when it is carried between sites")
                                .orEmpty(),
                        text("maker", "maker and model"),
                        text("serial_number", "serial number"),
                        reading("span", "full scale less start of scale", null).orEmpty(),
                        code("grade", "grade or class of a gauge", AccuracyGrade.class)
                                .orEmpty(),
                        reading("grade_percent", "largest error in percent of span where no listed grade applies", null)
                                .orEmpty(),
                        reading("accuracy", "largest error of an instrument that is no gauge", null)
                                .orEmpty(),
                        reading("division", "smallest step of the scale", null).orEmpty(),
                        of(CellKind.WHOLE, "interval_months", "how long a calibration counts by the rule of the plant")
                                .orEmpty(),
                        RegisterFiles.NOTE,
                        RegisterFiles.IN_SERVICE,
                        RegisterFiles.VERSION)
                .ofMachine("id" + USED);
    }

    private static DataFile calibrations() {
        return DataFile.of(
                        "calibrations",
                        "calibration",
                        "a calibration; one that was corrected stays",
                        RegisterFiles.BY_ID,
                        id("calibration_id", "id", "number of the calibration"),
                        SUBMISSION,
                        id("instrument_id", "instrument_id", "what was calibrated, in instruments.csv"),
                        of(CellKind.DAY, "done_on", "day of the calibration"),
                        of(CellKind.DAY, "due_on", "last day it counts"),
                        text("certificate_number", "number of the certificate"),
                        text("laboratory", "who did it"),
                        text("traceability", "to which standard it leads"),
                        of(CellKind.FLAG, "left_in_order", "whether the instrument left the laboratory in order"),
                        RegisterFiles.NOTE,
                        RECORDED_AT,
                        RECORDED_BY,
                        id("supersedes", "supersedes_id", "number of the calibration that it corrects")
                                .orEmpty(),
                        text("reason", "why it corrects that one").orEmpty())
                .ofMachine("instrument_id" + USED);
    }

    private static DataFile points() {
        return DataFile.of(
                        "calibration_points",
                        "calibration_point",
                        "what a laboratory found at one point, before any adjustment",
                        List.of("calibration_id", "position"),
                        id("calibration_id", "calibration_id", "its calibration, in calibrations.csv"),
                        of(CellKind.PLACE, "position", "place on the certificate, from 1"),
                        reading("reading", "what the instrument showed", null),
                        reading("error", "reading less true value; a difference, also for temperatures", null))
                .ofMachine("calibration_id in (select found.id from calibration found where found.instrument_id" + USED
                        + ")");
    }
}
