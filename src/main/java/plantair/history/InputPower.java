package plantair.history;

import java.util.Optional;
import plantair.pumpup.MotorInput;
import plantair.quantity.Power;
import plantair.testrecord.TestChecks;

/** Electric power into the motor as a test read it. */
final class InputPower {

    private InputPower() {}

    /** As read, or from volts, amps and power factor; empty when one of these was not read, as a guess would be money. */
    static Optional<Power> of(TestChecks checks) {
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
