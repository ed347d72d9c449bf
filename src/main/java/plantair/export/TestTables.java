package plantair.export;

import static plantair.export.DataColumn.code;
import static plantair.export.DataColumn.id;
import static plantair.export.DataColumn.of;
import static plantair.export.DataColumn.reading;
import static plantair.export.DataColumn.text;

import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;
import plantair.equipment.Control;
import plantair.pumpup.AirTemperature;
import plantair.pumpup.PumpUpMethods;
import plantair.pumpup.StaticHold;
import plantair.testrecord.GuideLog;
import plantair.testrecord.Laps;

/** The two tables that tests.csv shows as one row a run: what of that file was recorded, and not derived. */
final class TestTables {

    static final DataFile TESTS = new DataFile(
            TestFile.NAME,
            "pump_up_test",
            "a test",
            RegisterFiles.BY_ID,
            Stream.of(record(), conditions(), checks(), guide())
                    .flatMap(columns -> columns)
                    .toList(),
            null);

    static final DataFile RUNS = DataFile.of(
            TestFile.NAME,
            "pump_up_run",
            "a run",
            List.of("test_id", "position"),
            id("test_id", "test_id", "number of the test"),
            of(CellKind.PLACE, "run", "position", "number of the run, from 1"),
            reading("start_pressure", "gauge pressure at the start", Si.GAUGE),
            reading("stop_pressure", "gauge pressure at the stop", Si.GAUGE),
            reading("elapsed", "time from start to stop", Si.TIME),
            reading("start_air", "receiver air at the start", Si.TEMPERATURE).orEmpty(),
            reading("stop_air", "receiver air at the stop", Si.TEMPERATURE).orEmpty(),
            reading("settled_pressure", "gauge pressure after waiting", Si.GAUGE)
                    .orEmpty(),
            reading("settled_air", "receiver air after waiting", Si.TEMPERATURE).orEmpty(),
            reading("settled_wait", "how long was waited", Si.TIME).orEmpty(),
            new DataColumn("laps", "laps", "marks passed on the way", CellKind.TEXT, true, Laps::parse, null));

    private TestTables() {}

    private static Stream<DataColumn> record() {
        return Stream.of(
                id("test_id", "id", "number of the test"),
                of(CellKind.KEY, "submission", "made when the test was sent in"),
                id("compressor_id", "compressor_id", "number of the machine"),
                of(CellKind.MOMENT, "performed_at", "when the test was made"),
                code("zone", "id of that time zone", ZoneId::of),
                text("tester", "who made the runs"),
                text("notes", "notes of the tester"),
                new DataColumn("confirmed", "confirmed", "codes", CellKind.TEXT, false, cell -> cell, null),
                code("method_version", "method of the result", PumpUpMethods::version),
                of(CellKind.MOMENT, "recorded_at", "when it was recorded"),
                text("recorded_by", "who recorded it"),
                id("supersedes", "supersedes_id", "number of the test that this one corrects")
                        .orEmpty(),
                text("reason", "why it corrects that test").orEmpty(),
                text("override_reason", "why an instrument past its date was used")
                        .orEmpty(),
                of(CellKind.NUMBER, "learned_factor", "warming factor").orEmpty(),
                of(CellKind.NUMBER, "learned_uncertainty", "its uncertainty").orEmpty(),
                of(CellKind.WHOLE, "learned_from", "tests behind it").orEmpty());
    }

    private static Stream<DataColumn> conditions() {
        return Stream.of(
                reading("site_elevation", "elevation", Si.LENGTH).orEmpty(),
                reading("site_barometer", "usual barometer", Si.ABSOLUTE).orEmpty(),
                reading("barometer", "barometer read", Si.ABSOLUTE).orEmpty(),
                reading("intake_temperature", "air at the intake", Si.TEMPERATURE),
                reading("intake_humidity", "relative humidity", null).orEmpty(),
                code("air_temperature", "how the receiver air was treated", AirTemperature.class),
                reading("water", "liquid water left inside", Si.VOLUME).orEmpty(),
                reading("speed", "shaft speed", null).orEmpty(),
                reading("rated_speed", "rated shaft speed", null).orEmpty());
    }

    private static Stream<DataColumn> guide() {
        return Stream.of(
                reading("drained", "liquid drained", Si.VOLUME).orEmpty(),
                code("after_stop", "heard after the stop", GuideLog.AfterStop.class)
                        .orEmpty(),
                text("steps", "ticked and timed").orEmpty(),
                of(CellKind.MOMENT, "device_recorded_at", "finished by the device")
                        .orEmpty(),
                of(CellKind.WHOLE, "device_offset_ms", "server less device clock")
                        .orEmpty());
    }

    private static Stream<DataColumn> checks() {
        return Stream.of(
                reading("hold_start", "start of the hold", Si.GAUGE).orEmpty(),
                reading("hold_end", "end of the hold", Si.GAUGE).orEmpty(),
                reading("hold_wait", "time between them", Si.TIME).orEmpty(),
                code("hold_place", "where the air went", StaticHold.Place.class).orEmpty(),
                id("leak_test_id", "leak_test_id", "leak test of the hold").orEmpty(),
                of(CellKind.FLAG, "others_off", "other machines shut off").orEmpty(),
                of(CellKind.FLAG, "speed_held", "speed held").orEmpty(),
                reading("input_power", "electrical power", Si.POWER).orEmpty(),
                reading("voltage", "voltage", null).orEmpty(),
                reading("motor_current", "motor current", null).orEmpty(),
                reading("power_factor", "power factor", null).orEmpty(),
                reading("motor_efficiency", "motor efficiency", null).orEmpty(),
                reading("motor_power", "motor power", Si.POWER).orEmpty(),
                of(CellKind.WHOLE, "motor_phases", "phases").orEmpty(),
                reading("displacement", "displacement", Si.FLOW).orEmpty(),
                code("control", "control", Control.class).orEmpty());
    }
}
