package plantair.equipment.web;

import plantair.equipment.CompressorPlate;
import plantair.quantity.FixedUnit;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** What a person types about motor and shaft; paths begin with {@code motor.} */
final class MotorForm {

    private EnteredField power = new EnteredField();
    private EnteredField voltage = new EnteredField();
    private EnteredField current = new EnteredField();
    private String phases = "";
    private EnteredField frequency = new EnteredField();
    private EnteredField ratedSpeed = new EnteredField();
    private EnteredField displacement = new EnteredField();

    static MotorForm blank(UnitSet units) {
        var form = new MotorForm();
        form.power = EnteredField.blank(units.power());
        form.voltage = EnteredField.blank(FixedUnit.VOLT);
        form.current = EnteredField.blank(FixedUnit.AMPERE);
        form.frequency = EnteredField.blank(FixedUnit.HERTZ);
        form.ratedSpeed = EnteredField.blank(FixedUnit.RPM);
        form.displacement = EnteredField.blank(units.flow());
        return form;
    }

    static MotorForm from(CompressorPlate plate, UnitSet units) {
        var form = new MotorForm();
        form.power = EnteredField.of(plate.motorPower(), units.power());
        form.voltage = EnteredField.of(plate.motorVoltage(), FixedUnit.VOLT);
        form.current = EnteredField.of(plate.motorCurrent(), FixedUnit.AMPERE);
        form.phases = plate.motorPhases() == null ? "" : String.valueOf(plate.motorPhases());
        form.frequency = EnteredField.of(plate.frequency(), FixedUnit.HERTZ);
        form.ratedSpeed = EnteredField.of(plate.ratedSpeed(), FixedUnit.RPM);
        form.displacement = EnteredField.of(plate.displacement(), units.flow());
        return form;
    }

    public EnteredField getPower() {
        return power;
    }

    public EnteredField getVoltage() {
        return voltage;
    }

    public EnteredField getCurrent() {
        return current;
    }

    public String getPhases() {
        return phases;
    }

    public void setPhases(String phases) {
        this.phases = phases;
    }

    public EnteredField getFrequency() {
        return frequency;
    }

    public EnteredField getRatedSpeed() {
        return ratedSpeed;
    }

    public EnteredField getDisplacement() {
        return displacement;
    }
}
