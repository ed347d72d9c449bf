package plantair.export;

import static plantair.export.DataColumn.code;
import static plantair.export.DataColumn.id;
import static plantair.export.DataColumn.of;
import static plantair.export.DataColumn.reading;
import static plantair.export.DataColumn.text;

import java.time.ZoneId;
import plantair.guided.MachineFigures;

/** The quarterly readings of machines. */
final class ReadingsFile {

    static final DataFile FILE = DataFile.of(
                    "machine_readings",
                    "machine_readings",
                    "the quarterly readings of a compressor; those that were corrected stay",
                    RegisterFiles.BY_ID,
                    id("readings_id", "id", "number of the readings"),
                    InstrumentFiles.SUBMISSION,
                    RecordFiles.OF_MACHINE,
                    RecordFiles.OF_TEST.orEmpty(),
                    of(CellKind.MOMENT, "read_at", "when they were read, ISO 8601, UTC"),
                    code("zone", "id of the site’s time zone", ZoneId::of),
                    text("reader", "who read them"),
                    reading("hours", "hour meter", null).orEmpty(),
                    reading("loaded_hours", "meter of loaded hours", null).orEmpty(),
                    reading("current1", "motor current, first phase", null).orEmpty(),
                    reading("current2", "second phase", null).orEmpty(),
                    reading("current3", "third phase", null).orEmpty(),
                    reading("interstage_pressure", "gauge pressure between the stages", Si.GAUGE)
                            .orEmpty(),
                    reading("discharge_temperature", "where the air leaves the machine", Si.TEMPERATURE)
                            .orEmpty(),
                    code("oil_level", "at the glass: NORMAL, LOW or HIGH", MachineFigures.OilLevel.class)
                            .orEmpty(),
                    reading("filter_drop", "pressure drop over the intake filter", null)
                            .orEmpty(),
                    reading("separator_drop", "pressure drop over the oil separator", null)
                            .orEmpty(),
                    code("belt", "its look: SOUND, SLACK or WORN", MachineFigures.Belt.class)
                            .orEmpty(),
                    reading("speed", "shaft speed", null).orEmpty(),
                    text("noise", "anything heard"),
                    InstrumentFiles.RECORDED_AT,
                    InstrumentFiles.RECORDED_BY,
                    id("supersedes", "supersedes_id", "number of the readings that these correct")
                            .orEmpty(),
                    text("reason", "why they correct those").orEmpty())
            .ofMachine("compressor_id = ?");

    private ReadingsFile() {}
}
