package plantair.demo;

import plantair.pumpup.VolumePart;
import plantair.testrecord.InstrumentCopy;
import plantair.testrecord.RunEntry;
import plantair.testrecord.TestChecks;
import plantair.testrecord.TestConditions;
import plantair.testrecord.TestDraft;
import plantair.testrecord.VolumeCopy;

/** The tests as SQL. */
final class TestSql {

    private final Script script;

    TestSql(Script script) {
        this.script = script;
    }

    void add(DemoTest test) {
        TestDraft draft = test.draft();
        var insert = new Insert("pump_up_test")
                .set("submission", draft.submission())
                .set(
                        "compressor_id",
                        script.idOf("compressor", draft.compressor().tag()))
                .set("performed_at", draft.performedAt())
                .set("zone", draft.zone())
                .set("tester", draft.tester());
        conditions(insert, draft.conditions());
        checks(insert, draft.checks())
                .set("override_reason", draft.overrideReason())
                .set("notes", draft.notes())
                .set("confirmed", draft.confirmed())
                .set("method_version", draft.methodVersion())
                .set("recorded_at", test.recordedAt())
                .set("recorded_by", draft.tester());
        if (test.correction() != null) {
            insert.set("supersedes_id", script.idOf(test.correction().supersedes()))
                    .set("reason", test.correction().reason());
        }
        script.add(insert);
        Object id = script.idOf(draft.submission());
        for (int i = 0; i < draft.volumes().size(); i++) {
            volume(id, i, draft.volumes().get(i));
        }
        script.ratings("pump_up_rating", "test_id", id, draft.ratings());
        for (int i = 0; i < draft.runs().size(); i++) {
            run(id, i, draft.runs().get(i));
        }
        for (int i = 0; i < draft.instruments().size(); i++) {
            instrument(id, i, draft.instruments().get(i));
        }
    }

    private static Insert conditions(Insert insert, TestConditions conditions) {
        return insert.set("site_elevation", conditions.siteElevation())
                .set("site_barometer", conditions.siteBarometer())
                .set("barometer", conditions.barometer())
                .set("intake_temperature", conditions.intakeTemperature())
                .set("intake_humidity", conditions.intakeHumidity())
                .set("air_temperature", conditions.airTemperature())
                .set("water", conditions.water())
                .set("speed", conditions.speed())
                .set("rated_speed", conditions.ratedSpeed());
    }

    /** What the demo knows of; the rest was not read. */
    private static Insert checks(Insert insert, TestChecks checks) {
        return insert.set("hold_start", checks.holdStart())
                .set("hold_end", checks.holdEnd())
                .set("hold_wait", checks.holdWait())
                .set("hold_place", checks.holdPlace())
                .set("input_power", checks.inputPower())
                .set("motor_power", checks.motorPower())
                .set("motor_phases", checks.motorPhases())
                .set("displacement", checks.displacement())
                .set("control", checks.control());
    }

    private void instrument(Object testId, int position, InstrumentCopy copy) {
        script.add(new Insert("pump_up_instrument")
                .set("test_id", testId)
                .set("position", position)
                .set("kind", copy.kind())
                .set("instrument_id", script.idOf("instrument", copy.tag()))
                .set("tag", copy.tag())
                .set("span", copy.span())
                .set("limit_percent", copy.limitPercent())
                .set("division", copy.division())
                .set("accuracy", copy.accuracy())
                .set("due_on", copy.dueOn())
                .set("status", copy.status()));
    }

    private void volume(Object testId, int position, VolumeCopy copy) {
        String register = copy.kind() == VolumePart.Kind.RECEIVER ? "receiver" : "pipe_piece";
        script.add(new Insert("pump_up_volume")
                .set("test_id", testId)
                .set("position", position)
                .set("kind", copy.kind())
                .set("source_id", script.idOf(register, copy.label()))
                .set("label", copy.label())
                .set("volume", copy.volume())
                .set("length", copy.length())
                .set("bore", copy.bore())
                .set("mawp", copy.mawp())
                .set("known_by", copy.knownBy()));
    }

    private void run(Object testId, int position, RunEntry run) {
        script.add(new Insert("pump_up_run")
                .set("test_id", testId)
                .set("position", position)
                .set("start_pressure", run.startPressure())
                .set("stop_pressure", run.stopPressure())
                .set("elapsed", run.elapsed())
                .set("start_air", run.startAir())
                .set("stop_air", run.stopAir())
                .set("settled_pressure", run.settledPressure())
                .set("settled_air", run.settledAir())
                .set("settled_wait", run.settledWait())
                .set("laps", run.laps() == null ? null : run.laps().text()));
    }
}
