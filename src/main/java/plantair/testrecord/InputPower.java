package plantair.testrecord;

import java.util.Optional;
import plantair.pumpup.MotorInput;
import plantair.quantity.Power;

/** Electric power into the motor as a test read it. */
public final class InputPower {

    private InputPower() {}

    /** As read, or from volts, amps and power factor; empty when one of these was not read, as a guess would be money. */
    public static Optional<Power> of(TestChecks checks) {
        if (checks.inputPower() != null) {
            return Optional.of(Power.of(checks.inputPower()));
        }
        if (checks.voltage() == null
                || checks.motorCurrent() == null
                || checks.motorPhases() == null
                || checks.powerFactor() == null) {
            return Optional.empty();
        }
        return Optional.of(MotorInput.electrical(
                checks.voltage().value(),
                checks.motorCurrent().value(),
                checks.motorPhases(),
                checks.powerFactor().part()));
    }
}
