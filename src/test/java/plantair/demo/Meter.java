package plantair.demo;

import java.time.LocalDate;
import java.util.Random;
import plantair.equipment.CompressorPlate;
import plantair.quantity.Entered;
import plantair.quantity.Power;
import plantair.quantity.PowerUnit;
import plantair.quantity.Rounded;
import plantair.testrecord.TestChecks;

/** The meter on a motor's feed: a worn machine takes as much power as a new one. */
final class Meter {

    /** Electric power of a motor at full load over its plate, which is shaft power. */
    private static final double INPUT_OVER_PLATE = 1.04;

    private static final double SPREAD = 0.008;

    private Meter() {}

    /** The checks with the power read that day; a draw of its own, so that the other readings stay as they are. */
    static TestChecks read(TestChecks checks, CompressorPlate plate, LocalDate day) {
        var random = new Random(31L * plate.tag().hashCode() + day.toEpochDay());
        double kilowatts =
                Power.of(plate.motorPower()).in(PowerUnit.KW) * INPUT_OVER_PLATE * (1 + SPREAD * random.nextGaussian());
        return new TestChecks(
                checks.holdStart(),
                checks.holdEnd(),
                checks.holdWait(),
                checks.holdPlace(),
                checks.othersOff(),
                checks.speedHeld(),
                new Entered(Rounded.places(kilowatts, 1), PowerUnit.KW),
                checks.voltage(),
                checks.motorCurrent(),
                checks.powerFactor(),
                checks.motorEfficiency(),
                checks.motorPower(),
                checks.motorPhases(),
                checks.displacement(),
                checks.control());
    }
}
