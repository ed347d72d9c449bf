package plantair.export;

import static plantair.export.DataColumn.code;
import static plantair.export.DataColumn.id;
import static plantair.export.DataColumn.of;
import static plantair.export.DataColumn.reading;
import static plantair.export.DataColumn.text;

import java.util.List;
import java.util.stream.Stream;
import plantair.equipment.VolumeKnownBy;
import plantair.instrument.CalibrationStatus;
import plantair.instrument.InstrumentKind;
import plantair.maintenance.EventKind;
import plantair.pumpup.VolumePart;
import plantair.register.ChangeKind;

/** What belongs to tests and is not in their own file, what was done to machines, and what was decided. */
final class RecordFiles {

    static final DataColumn OF_TEST = id("test_id", "test_id", "its test, in tests.csv");
    private static final DataColumn PLACE = of(CellKind.PLACE, "position", "place in the test, from 1");
    static final DataColumn OF_MACHINE = id("compressor_id", "compressor_id", "its compressor, in compressors.csv");
    private static final List<String> IN_TEST = List.of("test_id", "position");
    private static final String TESTS_OF = " in (select made.id from pump_up_test made where made.compressor_id = ?)";

    private static final String INSTRUMENTS_OF =
            " in (select used.instrument_id from pump_up_instrument used where used.test_id" + TESTS_OF + ")";

    /** Condition on attachments: those of a compressor, its tests and work, and of what was used in its tests. */
    static final String PAPERS_OF = "kind = 'COMPRESSOR' and object_id = ?"
            + " or kind = 'TEST' and object_id" + TESTS_OF
            + " or kind = 'READINGS' and object_id in (select r.id from machine_readings r where r.compressor_id = ?)"
            + " or kind = 'EVENT' and object_id in (select e.id from maintenance_event e where e.compressor_id = ?)"
            + " or kind = 'LEAK_TEST' and object_id" + LeakTables.OF_VOLUME
            + " or kind = 'RECEIVER' and object_id in (select v.source_id from pump_up_volume v"
            + " where v.kind = 'RECEIVER' and v.test_id" + TESTS_OF + ")"
            + " or kind = 'INSTRUMENT' and object_id" + INSTRUMENTS_OF
            + " or kind = 'CALIBRATION' and object_id in (select c.id from calibration c"
            + " where c.instrument_id" + INSTRUMENTS_OF + ")";

    private static final String IDS_OF_PAPERS = " in (select a.id from attachment a where " + PAPERS_OF + ")";

    private RecordFiles() {}

    static Stream<DataFile> all() {
        return Stream.of(
                volumes(),
                RegisterFiles.ratings("test_ratings", "pump_up_rating", "test_id")
                        .ofMachine("test_id" + TESTS_OF),
                instruments(),
                events(),
                baselines(),
                limits(),
                restatements(),
                restatedTests(),
                reviews(),
                PaperFiles.attachments().ofMachine(PAPERS_OF),
                PaperFiles.withdrawals().ofMachine("attachment_id" + IDS_OF_PAPERS),
                ReadingsFile.FILE,
                changes());
    }

    private static DataFile volumes() {
        return DataFile.of(
                        "test_volumes",
                        "pump_up_volume",
                        "a receiver or pipe piece of a test, as the register had it on that day",
                        IN_TEST,
                        OF_TEST,
                        PLACE,
                        code("kind", "RECEIVER or PIPE", VolumePart.Kind.class),
                        id("source_id", "source_id", "its number in receivers.csv or pipes.csv"),
                        text("label", "its tag"),
                        reading("volume", "its volume", Si.VOLUME).orEmpty(),
                        reading("length", "length of a pipe", Si.LENGTH).orEmpty(),
                        reading("bore", "bore of a pipe", Si.LENGTH).orEmpty(),
                        reading("mawp", "maximum allowable working pressure, gauge", Si.GAUGE)
                                .orEmpty(),
                        code("known_by", "how the volume is known", VolumeKnownBy.class)
                                .orEmpty())
                .ofMachine("test_id" + TESTS_OF);
    }

    private static DataFile instruments() {
        return DataFile.of(
                        "test_instruments",
                        "pump_up_instrument",
                        "an instrument of a test, as the register had it on that day",
                        IN_TEST,
                        OF_TEST,
                        PLACE,
                        code("kind", "what it reads", InstrumentKind.class),
                        id("instrument_id", "instrument_id", "its number in instruments.csv"),
                        text("tag", "its tag"),
                        reading("span", "span of a gauge", null).orEmpty(),
                        reading("limit_percent", "largest error of a gauge in percent of span", null)
                                .orEmpty(),
                        reading("division", "smallest step of the scale", null).orEmpty(),
                        reading("accuracy", "largest error of an instrument that is no gauge", null)
                                .orEmpty(),
                        of(CellKind.DAY, "due_on", "last day of its calibration")
                                .orEmpty(),
                        code("status", "its calibration on the day of the test", CalibrationStatus.class))
                .ofMachine("test_id" + TESTS_OF);
    }

    private static DataFile events() {
        return DataFile.of(
                        "events",
                        "maintenance_event",
                        "something done to a compressor; one that was corrected or withdrawn stays",
                        RegisterFiles.BY_ID,
                        id("event_id", "id", "number of the event"),
                        InstrumentFiles.SUBMISSION,
                        OF_MACHINE,
                        of(CellKind.DAY, "happened_on", "day of the work, at the site"),
                        code("kind", "what was done", EventKind.class),
                        of(CellKind.FLAG, "may_step", "whether it may have changed the output"),
                        text("done_by", "who did it"),
                        RegisterFiles.NOTE,
                        of(CellKind.FLAG, "withdrawn", "true when it says that the superseded event did not happen"),
                        InstrumentFiles.RECORDED_AT,
                        InstrumentFiles.RECORDED_BY,
                        id("supersedes", "supersedes_id", "number of the event that it corrects")
                                .orEmpty(),
                        text("reason", "why it corrects that one").orEmpty())
                .ofMachine("compressor_id = ?");
    }

    private static DataFile baselines() {
        return DataFile.of(
                        "baselines",
                        "baseline_choice",
                        "the decision that a test is the baseline of its compressor from then on",
                        RegisterFiles.BY_ID,
                        id("baseline_id", "id", "number of the choice"),
                        InstrumentFiles.SUBMISSION,
                        OF_MACHINE,
                        OF_TEST,
                        id("event_id", "event_id", "the work behind it, in events.csv")
                                .orEmpty(),
                        text("reason", "why"),
                        of(CellKind.MOMENT, "chosen_at", "when it was chosen, ISO 8601, UTC"),
                        text("chosen_by", "who chose it"))
                .ofMachine("compressor_id = ?");
    }

    private static DataFile limits() {
        return DataFile.of(
                "limits",
                "plant_limits",
                "at which part of the baseline a site wants to act; a site without a row keeps to the defaults",
                List.of("site_id"),
                id("site_id", "site_id", "the site, in sites.csv"),
                of(CellKind.WHOLE, "watch_below", "watch below this percent of the baseline"),
                of(CellKind.WHOLE, "plan_below", "plan the work below this percent"),
                of(CellKind.WHOLE, "act_below", "act below this percent"),
                RegisterFiles.VERSION);
    }

    private static DataFile restatements() {
        return DataFile.of(
                "restatements",
                "gauge_restatement",
                "the signed decision that a calibration restates tests made with that gauge before",
                RegisterFiles.BY_ID,
                id("restatement_id", "id", "number of the decision"),
                id("calibration_id", "calibration_id", "the calibration, in calibrations.csv"),
                of(CellKind.MOMENT, "restated_at", "when it was signed, ISO 8601, UTC"),
                text("restated_by", "who signed it"),
                text("note", "what was said with it"));
    }

    private static DataFile restatedTests() {
        return DataFile.of(
                        "restated_tests",
                        "gauge_restatement_test",
                        "a test that a restatement names",
                        List.of("restatement_id", "test_id"),
                        id("restatement_id", "restatement_id", "the decision, in restatements.csv"),
                        OF_TEST)
                .ofMachine("test_id" + TESTS_OF);
    }

    /** Without number of its own: the order of the rows is that of the changes. */
    private static DataFile changes() {
        return DataFile.of(
                        "changes",
                        "change_record",
                        "a change, in the order of writing",
                        RegisterFiles.BY_ID,
                        of(CellKind.MOMENT, "changed_at", "when, ISO 8601, UTC"),
                        text("changed_by", "who"),
                        code("kind", "what was changed", ChangeKind.class),
                        id("object_id", "object_id", "number of what was changed"),
                        text("object_name", "how people call it"),
                        text("before_text", "what it said before, one fact a line; empty when it was new")
                                .orEmpty(),
                        text("after_text", "what it says now"),
                        text("reason", "why"))
                .ofMachine("kind = 'COMPRESSOR' and object_id = ?"
                        + " or kind = 'TEST' and object_id" + TESTS_OF
                        + " or kind = 'EVENT' and object_id in (select e.id from maintenance_event e"
                        + " where e.compressor_id = ?)"
                        + " or kind = 'READINGS' and object_id in (select m.id from machine_readings m"
                        + " where m.compressor_id = ?)"
                        + " or kind = 'BASELINE' and object_id in (select b.id from baseline_choice b"
                        + " where b.compressor_id = ?)"
                        + " or kind = 'REVIEW' and object_id in (select r.id from test_review r"
                        + " where r.test_id" + TESTS_OF + ")"
                        + " or kind = 'LEAK_TEST' and object_id" + LeakTables.OF_VOLUME
                        + " or kind = 'ATTACHMENT' and object_id" + IDS_OF_PAPERS
                        + " or kind = 'INSTRUMENT' and object_id" + INSTRUMENTS_OF
                        + " or kind = 'CALIBRATION' and object_id in (select c.id from calibration c"
                        + " where c.instrument_id" + INSTRUMENTS_OF + ")");
    }

    private static DataFile reviews() {
        return DataFile.of(
                        "reviews",
                        "test_review",
                        "a review: a second person looked at a test, which is locked since",
                        RegisterFiles.BY_ID,
                        id("review_id", "id", "number of the review"),
                        InstrumentFiles.SUBMISSION,
                        OF_TEST,
                        of(CellKind.MOMENT, "reviewed_at", "when it was signed, ISO 8601, UTC"),
                        text("reviewed_by", "who signed it"),
                        text("note", "what was looked at"))
                .ofMachine("test_id" + TESTS_OF);
    }
}
