package plantair.export;

import static plantair.export.DataColumn.code;
import static plantair.export.DataColumn.id;
import static plantair.export.DataColumn.of;
import static plantair.export.DataColumn.reading;
import static plantair.export.DataColumn.text;

import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;
import plantair.equipment.VolumeKnownBy;
import plantair.leaktest.FallReading;
import plantair.leaktest.LeakComponent;
import plantair.leaktest.LeakPlace;
import plantair.leaktest.LeakPriority;
import plantair.leaktest.LeakTestKind;
import plantair.leaktest.SharedParts;
import plantair.leaktest.StepKind;
import plantair.pumpup.VolumePart;
import plantair.supply.SizedBy;

/** Leak tests of the sites, and the leaks that were found. */
final class LeakTables {

    private static final Si<Double> SECONDS = new Si<>("_s", FallReading::seconds, Double::doubleValue);

    /** Condition on leak tests: those of the test volume of a compressor. */
    static final String OF_VOLUME = " in (select shut.id from leak_test shut where shut.compressor_id = ?)";

    private static final List<String> IN_TEST = List.of("test_id", "position");
    private static final DataColumn OF_TEST = id("leak_test_id", "test_id", "its leak test, in leak_tests.csv");
    private static final DataColumn PLACE = of(CellKind.PLACE, "position", "place in the test, from 1");
    private static final DataColumn SITE = id("site_id", "site_id", "the site, in sites.csv");
    private static final DataColumn ZONE = code("zone", "id of the time zone of the site", ZoneId::of);

    private LeakTables() {}

    /** What refers to no pump-up test. */
    static Stream<DataFile> beforeTests() {
        return Stream.of(tests(), cycles(), readings(), volumes(), leaks(), steps());
    }

    private static DataFile tests() {
        return DataFile.of(
                        "leak_tests",
                        "leak_test",
                        "a leak test; one that was corrected or withdrawn stays",
                        RegisterFiles.BY_ID,
                        id("leak_test_id", "id", "number of the leak test"),
                        InstrumentFiles.SUBMISSION,
                        SITE,
                        id(
                                        "compressor_id",
                                        "compressor_id",
                                        "the machine whose test volume was shut; empty for a system")
                                .orEmpty(),
                        code("kind", "how the leak was measured", LeakTestKind.class),
                        code("place", "what was shut", LeakPlace.class),
                        of(CellKind.MOMENT, "performed_at", "when the test was made, ISO 8601, UTC"),
                        ZONE,
                        text("tester", "who made it"),
                        of(CellKind.FLAG, "users_off", "true when nobody used air"),
                        of(CellKind.FLAG, "drains_off", "true when timed drains and the purge of dryers were shut"),
                        reading("at_pressure", "gauge pressure for which the leak is told", Si.GAUGE),
                        reading("site_elevation", "elevation of the site on that day", Si.LENGTH)
                                .orEmpty(),
                        reading("site_barometer", "usual station pressure of the site on that day", Si.ABSOLUTE)
                                .orEmpty(),
                        reading("barometer", "station pressure read in the test", Si.ABSOLUTE)
                                .orEmpty(),
                        reading("volume", "volume typed in place of receivers and pipes", Si.VOLUME)
                                .orEmpty(),
                        reading("volume_percent", "how far that may be off in percent, 95 %", null)
                                .orEmpty(),
                        reading("division", "smallest step of the gauge that could be read", null)
                                .orEmpty(),
                        of(CellKind.FLAG, "leave_early", "true when the first five minutes of a fall are left out"),
                        RegisterFiles.NOTE,
                        text("confirmed", "codes of what was unusual and confirmed"),
                        InstrumentFiles.RECORDED_AT,
                        InstrumentFiles.RECORDED_BY,
                        id("supersedes", "supersedes_id", "number of the leak test that it corrects")
                                .orEmpty(),
                        text("reason", "why it corrects that one").orEmpty(),
                        of(CellKind.FLAG, "withdrawn", "true when it says that the superseded one does not count"))
                .ofMachine("compressor_id = ?");
    }

    private static DataFile cycles() {
        return DataFile.of(
                "leak_cycles",
                "leak_cycle",
                "a cycle of the compressors in a leak test by load times",
                IN_TEST,
                OF_TEST,
                PLACE,
                reading("loaded", "time compressing", SECONDS),
                reading("unloaded", "time turning without compressing", SECONDS).orEmpty(),
                reading("standing", "time off", SECONDS).orEmpty());
    }

    private static DataFile readings() {
        return DataFile.of(
                        "leak_readings",
                        "leak_reading",
                        "a reading of a falling pressure in a leak test",
                        IN_TEST,
                        OF_TEST,
                        PLACE,
                        reading("at_time", "time from the first reading, or from the stop of the machine", SECONDS),
                        reading("pressure", "gauge pressure", Si.GAUGE))
                .ofMachine("test_id" + OF_VOLUME);
    }

    private static DataFile volumes() {
        return DataFile.of(
                        "leak_volumes",
                        "leak_volume",
                        "a receiver or pipe piece that was shut in a leak test, as the register had it on that day",
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
                .ofMachine("test_id" + OF_VOLUME);
    }

    /** A machine that ran; it may refer to a pump-up test. */
    static DataFile machines() {
        return DataFile.of(
                "leak_machines",
                "leak_machine",
                "a compressor that ran in a leak test by load times, with what it delivers",
                IN_TEST,
                OF_TEST,
                PLACE,
                RecordFiles.OF_MACHINE,
                text("label", "its tag on that day"),
                reading("capacity", "capacity as typed, free air at the intake", Si.FLOW)
                        .orEmpty(),
                reading("capacity_at", "gauge pressure of that", Si.GAUGE).orEmpty(),
                reading("capacity_percent", "how far that may be off in percent, 95 %", null)
                        .orEmpty(),
                id("measured_test_id", "measured_test_id", "the test of a measured capacity, in tests.csv")
                        .orEmpty(),
                of(CellKind.DAY, "measured_on", "day of that test").orEmpty(),
                of(CellKind.NUMBER, "measured_flow_m3_per_s", "measured_flow", "its free air at the intake, m³/s")
                        .orEmpty(),
                of(CellKind.NUMBER, "measured_at_pa", "measured_at", "gauge pressure of that, Pa")
                        .orEmpty(),
                of(
                                CellKind.NUMBER,
                                "measured_random",
                                "relative standard uncertainty of it that no other machine shares")
                        .orEmpty(),
                new DataColumn(
                        "measured_shared",
                        "measured_shared",
                        "relative standard uncertainties that it shares, by source",
                        CellKind.TEXT,
                        true,
                        SharedParts::parse,
                        null));
    }

    private static DataFile leaks() {
        return DataFile.of(
                "found_leaks",
                "found_leak",
                "a leak that was found",
                RegisterFiles.BY_ID,
                id("leak_id", "id", "number of the leak"),
                InstrumentFiles.SUBMISSION,
                SITE,
                ZONE,
                text("tag", "what hangs on it"),
                text("place", "where it is"),
                code("component", "what leaks", LeakComponent.class),
                code("size_by", "how its size was estimated; empty when nobody did", SizedBy.class)
                        .orEmpty(),
                reading("flow", "estimated free air at the intake", Si.FLOW).orEmpty(),
                reading("bore", "diameter of a hole", Si.LENGTH).orEmpty(),
                reading("pressure", "gauge pressure behind it", Si.GAUGE).orEmpty(),
                reading("elevation", "elevation of the site on that day", Si.LENGTH)
                        .orEmpty(),
                reading("barometer", "usual station pressure of the site on that day", Si.ABSOLUTE)
                        .orEmpty(),
                code("priority", "how soon it should be mended", LeakPriority.class),
                of(CellKind.DAY, "found_on", "day it was found, at the site"),
                text("found_by", "who found it"),
                RegisterFiles.NOTE,
                InstrumentFiles.RECORDED_AT,
                InstrumentFiles.RECORDED_BY);
    }

    private static DataFile steps() {
        return DataFile.of(
                "found_leak_steps",
                "found_leak_step",
                "what became of a found leak",
                RegisterFiles.BY_ID,
                id("step_id", "id", "number of the step"),
                InstrumentFiles.SUBMISSION,
                id("leak_id", "leak_id", "its leak, in found_leaks.csv"),
                of(CellKind.PLACE, "position", "place among the steps of the leak, from 1"),
                code("kind", "what was done", StepKind.class),
                of(CellKind.DAY, "done_on", "day of it, at the site"),
                text("done_by", "who did it"),
                RegisterFiles.NOTE,
                InstrumentFiles.RECORDED_AT,
                InstrumentFiles.RECORDED_BY);
    }
}
