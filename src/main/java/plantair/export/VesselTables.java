package plantair.export;

import static plantair.export.DataColumn.code;
import static plantair.export.DataColumn.id;
import static plantair.export.DataColumn.of;
import static plantair.export.DataColumn.reading;
import static plantair.export.DataColumn.text;

import java.util.List;
import java.util.stream.Stream;
import plantair.due.DueKind;
import plantair.vessel.FindingKind;
import plantair.vessel.InspectionKind;
import plantair.vessel.TestMethod;
import plantair.vessel.WallPart;

/** The safety records of receivers, and how often a site wants something done. */
final class VesselTables {

    private static final DataColumn OF_RECEIVER = id("receiver_id", "receiver_id", "its receiver, in receivers.csv");
    private static final DataColumn DONE_ON = of(CellKind.DAY, "done_on", "day it was done, at the site");
    private static final DataColumn WITHDRAWN =
            of(CellKind.FLAG, "withdrawn", "true when it says that the superseded one did not happen");
    private static final DataColumn SUPERSEDES = id("supersedes", "supersedes_id", "number of the one that it corrects")
            .orEmpty();
    private static final DataColumn REASON =
            text("reason", "why it corrects that one").orEmpty();

    private VesselTables() {}

    static Stream<DataFile> all() {
        return Stream.of(valves(), valveTests(), certificates(), inspections(), wall(), findings(), intervals());
    }

    private static DataFile valves() {
        return DataFile.of(
                "relief_valves",
                "relief_valve",
                "a relief valve of a receiver",
                RegisterFiles.BY_ID,
                id("valve_id", "id", "number of the valve"),
                OF_RECEIVER,
                text("tag", "how the plant calls it"),
                reading("set_pressure", "pressure at which it opens, gauge", Si.GAUGE),
                reading("capacity", "flow that it lets go, as stamped", Si.FLOW).orEmpty(),
                text("code_stamp", "stamp of the code it was made to"),
                of(CellKind.DAY, "installed_on", "day it was installed").orEmpty(),
                RegisterFiles.NOTE,
                RegisterFiles.IN_SERVICE,
                RegisterFiles.VERSION);
    }

    private static DataFile valveTests() {
        return DataFile.of(
                "relief_valve_tests",
                "valve_test",
                "a test of a relief valve; one that was corrected or withdrawn stays",
                RegisterFiles.BY_ID,
                id("valve_test_id", "id", "number of the test of the valve"),
                InstrumentFiles.SUBMISSION,
                id("valve_id", "valve_id", "its valve, in relief_valves.csv"),
                DONE_ON,
                code("method", "how it was tested", TestMethod.class),
                reading("popped_at", "pressure at which it opened, gauge", Si.GAUGE)
                        .orEmpty(),
                of(CellKind.FLAG, "passed", "the result"),
                text("done_by", "who did it"),
                RegisterFiles.NOTE,
                WITHDRAWN,
                InstrumentFiles.RECORDED_AT,
                InstrumentFiles.RECORDED_BY,
                SUPERSEDES,
                REASON);
    }

    private static DataFile certificates() {
        return DataFile.of(
                "certificates",
                "vessel_certificate",
                "a certificate or permit of a receiver",
                RegisterFiles.BY_ID,
                id("certificate_id", "id", "number of the record"),
                OF_RECEIVER,
                text("number", "number on the paper"),
                text("issued_by", "authority, insurer or inspection body"),
                of(CellKind.DAY, "issued_on", "day of issue"),
                reading("permitted", "pressure that it permits, gauge", Si.GAUGE)
                        .orEmpty(),
                of(CellKind.DAY, "valid_to", "last day; empty where it has no end")
                        .orEmpty(),
                RegisterFiles.NOTE,
                of(CellKind.FLAG, "in_force", "false once it was withdrawn or another took its place"),
                RegisterFiles.VERSION);
    }

    private static DataFile inspections() {
        return DataFile.of(
                "inspections",
                "vessel_inspection",
                "an inspection of a receiver; one that was corrected or withdrawn stays",
                RegisterFiles.BY_ID,
                id("inspection_id", "id", "number of the inspection"),
                InstrumentFiles.SUBMISSION,
                OF_RECEIVER,
                code("kind", "what kind of look", InspectionKind.class),
                DONE_ON,
                text("inspector", "name of the inspector, and number of the commission"),
                text("employer", "employer of the inspector"),
                text("findings", "in the inspector's words"),
                reading(
                                "reduced_mawp",
                                "maximum allowable working pressure, if the inspector reduced it, gauge",
                                Si.GAUGE)
                        .orEmpty(),
                of(CellKind.DAY, "next_due", "as the inspector states it").orEmpty(),
                text("instrument", "with which the wall was measured"),
                reading("accuracy", "its largest error either way", Si.LENGTH).orEmpty(),
                WITHDRAWN,
                InstrumentFiles.RECORDED_AT,
                InstrumentFiles.RECORDED_BY,
                SUPERSEDES,
                REASON);
    }

    private static DataFile wall() {
        return DataFile.of(
                "wall_readings",
                "wall_reading",
                "a reading of the wall's thickness in an inspection",
                List.of("inspection_id", "position"),
                id("inspection_id", "inspection_id", "its inspection, in inspections.csv"),
                of(CellKind.PLACE, "position", "place in the report, from 1"),
                text("place", "name of the place"),
                code("part", "what it is on", WallPart.class),
                reading("thickness", "thickness of the wall", Si.LENGTH));
    }

    private static DataFile findings() {
        return DataFile.of(
                "damage",
                "vessel_finding",
                "damage seen on a receiver, or the word that some is mended",
                RegisterFiles.BY_ID,
                id("finding_id", "id", "number of the record"),
                InstrumentFiles.SUBMISSION,
                OF_RECEIVER,
                of(CellKind.DAY, "found_on", "day it was seen, or looked at again"),
                code("kind", "what was seen", FindingKind.class),
                RegisterFiles.NOTE,
                InstrumentFiles.RECORDED_AT,
                InstrumentFiles.RECORDED_BY,
                id("clears", "clears_id", "number of the damage that this one says is mended")
                        .orEmpty());
    }

    private static DataFile intervals() {
        return DataFile.of(
                "intervals",
                "due_interval",
                "how often a site wants something done",
                RegisterFiles.BY_ID,
                id("interval_id", "id", "number of the record"),
                id("site_id", "site_id", "the site, in sites.csv"),
                code("kind", "what is to be done", DueKind.class),
                of(CellKind.WHOLE, "months", "months between; empty where the site wants no interval")
                        .orEmpty(),
                text("authority", "the authority that the site names for it"),
                RegisterFiles.VERSION);
    }
}
