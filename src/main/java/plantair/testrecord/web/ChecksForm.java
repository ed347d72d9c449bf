package plantair.testrecord.web;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.StaticHold;
import plantair.quantity.DurationUnit;
import plantair.quantity.FixedUnit;
import plantair.quantity.PowerUnit;
import plantair.testrecord.HoldSource;
import plantair.testrecord.TestChecks;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** Form bean of what was checked around the runs, everything as text. */
public final class ChecksForm {

    private String holdPlace = "";
    private String leakTest = "";
    private String othersOff = "";
    private String speedHeld = "";
    private EnteredField holdStart = new EnteredField();
    private EnteredField holdEnd = new EnteredField();
    private EnteredField holdWait = new EnteredField();
    private EnteredField inputPower = new EnteredField();
    private EnteredField voltage = new EnteredField();
    private EnteredField motorCurrent = new EnteredField();
    private EnteredField powerFactor = new EnteredField();
    private EnteredField motorEfficiency = new EnteredField();

    static ChecksForm of(TestChecks checks, UnitSet units) {
        var form = new ChecksForm();
        form.holdStart = EnteredField.of(checks.holdStart(), units.pressure());
        form.holdEnd = EnteredField.of(checks.holdEnd(), units.pressure());
        form.holdWait = EnteredField.of(checks.holdWait(), DurationUnit.MINUTE);
        form.holdPlace = checks.holdPlace() == null ? "" : checks.holdPlace().name();
        form.leakTest = Objects.toString(checks.leakTestId(), "");
        form.othersOff = answer(checks.othersOff());
        form.speedHeld = answer(checks.speedHeld());
        form.inputPower = EnteredField.of(checks.inputPower(), PowerUnit.KW);
        form.voltage = EnteredField.of(checks.voltage(), FixedUnit.VOLT);
        form.motorCurrent = EnteredField.of(checks.motorCurrent(), FixedUnit.AMPERE);
        form.powerFactor = EnteredField.of(checks.powerFactor(), FixedUnit.PERCENT);
        form.motorEfficiency = EnteredField.of(checks.motorEfficiency(), FixedUnit.PERCENT);
        return form;
    }

    /** Fills in a hold that was measured as a leak test of its own. */
    void fill(long leakTestId, HoldSource.Hold hold) {
        leakTest = String.valueOf(leakTestId);
        holdStart = EnteredField.of(hold.start(), hold.start().unit());
        holdEnd = EnteredField.of(hold.end(), hold.end().unit());
        holdWait = EnteredField.of(hold.waited(), hold.waited().unit());
        holdPlace = StaticHold.Place.TEST_VOLUME.name();
    }

    private static String answer(@Nullable Boolean yes) {
        return yes == null ? "" : (yes ? ChecksReader.Answer.YES : ChecksReader.Answer.NO).name();
    }

    public String getHoldPlace() {
        return holdPlace;
    }

    public void setHoldPlace(@Nullable String holdPlace) {
        this.holdPlace = holdPlace == null ? "" : holdPlace;
    }

    public String getLeakTest() {
        return leakTest;
    }

    public void setLeakTest(@Nullable String leakTest) {
        this.leakTest = leakTest == null ? "" : leakTest;
    }

    public String getOthersOff() {
        return othersOff;
    }

    public void setOthersOff(@Nullable String othersOff) {
        this.othersOff = othersOff == null ? "" : othersOff;
    }

    public String getSpeedHeld() {
        return speedHeld;
    }

    public void setSpeedHeld(@Nullable String speedHeld) {
        this.speedHeld = speedHeld == null ? "" : speedHeld;
    }

    public EnteredField getHoldStart() {
        return holdStart;
    }

    public EnteredField getHoldEnd() {
        return holdEnd;
    }

    public EnteredField getHoldWait() {
        return holdWait;
    }

    public EnteredField getInputPower() {
        return inputPower;
    }

    public EnteredField getVoltage() {
        return voltage;
    }

    public EnteredField getMotorCurrent() {
        return motorCurrent;
    }

    public EnteredField getPowerFactor() {
        return powerFactor;
    }

    public EnteredField getMotorEfficiency() {
        return motorEfficiency;
    }
}
