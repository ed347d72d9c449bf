package plantair.testrecord.web;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;
import plantair.testrecord.InstrumentCopy;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.TestChecks;
import plantair.testrecord.TestConditions;
import plantair.testrecord.VolumeCopy;

/**
 * A reading of the whole test exactly as typed.
 *
 * @param name what was read
 * @param value number and unit as typed, or words for a reading not taken
 */
record ReadingsView(String name, String value) {

    static List<ReadingsView> of(PumpUpTest test, ResultWords words) {
        List<ReadingsView> rows = new ArrayList<>();
        for (VolumeCopy copy : test.volumes()) {
            String size = copy.volume() == null
                    ? words.say("test.pipeSize", copy.length(), copy.bore())
                    : copy.volume().toString();
            rows.add(new ReadingsView(copy.label(), size));
        }
        TestConditions conditions = test.conditions();
        add(rows, words, "water", conditions.water());
        add(rows, words, "barometer", conditions.barometer());
        if (conditions.barometer() == null) {
            add(rows, words, "siteBarometer", conditions.siteBarometer());
            add(rows, words, "siteElevation", conditions.siteElevation());
        }
        add(rows, words, "intakeTemperature", conditions.intakeTemperature());
        rows.add(new ReadingsView(
                words.say("test.intakeHumidity"),
                conditions.intakeHumidity() == null
                        ? words.say("test.notRead")
                        : conditions.intakeHumidity().toString()));
        rows.add(new ReadingsView(words.say("test.airTemperature"), words.say("air." + conditions.airTemperature())));
        add(rows, words, "speed", conditions.speed());
        add(rows, words, "ratedSpeed", conditions.ratedSpeed());
        for (InstrumentCopy copy : test.instruments()) {
            String due = words.say(
                    "test.instrumentDue",
                    copy.dueOn() == null ? "–" : copy.dueOn().toString(),
                    words.say("status." + copy.status()));
            rows.add(new ReadingsView(words.say("test.instrument", copy.tag()), due));
        }
        if (test.overrideReason() != null) {
            rows.add(new ReadingsView("", words.say("test.overrideOnRecord", test.overrideReason())));
        }
        hold(rows, words, test.checks());
        return rows;
    }

    private static void hold(List<ReadingsView> rows, ResultWords words, TestChecks checks) {
        if (checks.holdStart() != null && checks.holdEnd() != null && checks.holdWait() != null) {
            rows.add(new ReadingsView(
                    words.say("test.staticHold"),
                    words.say("test.staticHold.text", checks.holdStart(), checks.holdEnd(), checks.holdWait())));
        }
        add(rows, words, "inputPower.label", checks.inputPower());
        add(rows, words, "voltage.label", checks.voltage());
        add(rows, words, "motorCurrent.label", checks.motorCurrent());
        add(rows, words, "powerFactor.label", checks.powerFactor());
        add(rows, words, "motorEfficiency.label", checks.motorEfficiency());
    }

    private static void add(List<ReadingsView> rows, ResultWords words, String key, @Nullable Entered entered) {
        if (entered != null) {
            rows.add(new ReadingsView(words.say("test." + key), entered.toString()));
        }
    }
}
