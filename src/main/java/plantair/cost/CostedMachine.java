package plantair.cost;

import java.util.Optional;
import plantair.equipment.Compressor;
import plantair.history.WaitingCost;
import plantair.testrecord.MeasuredPower;

/**
 * A compressor with what is known of its cost.
 *
 * @param compressor the machine
 * @param power what it delivered and took in its newest test that tells both
 * @param waiting what is known of the cost of its lost output
 */
public record CostedMachine(Compressor compressor, Optional<MeasuredPower> power, WaitingCost waiting) {

    /** How the plant calls it. */
    public String tag() {
        return compressor.tag();
    }
}
