package plantair.pumpup;

import org.jspecify.annotations.Nullable;
import plantair.quantity.FlowRate;
import plantair.quantity.Power;

/**
 * What is known of the machine beside its rating.
 *
 * @param displacement swept volume of the first stage times speed (M16); null when not known
 * @param motorPlate power on the motor's plate; null when not known
 * @param shaftPower power into the compressor's shaft as measured (M17); null when not measured
 * @param speedFree true when a variable-speed drive followed the pressure during the runs
 * @param othersOff whether every other machine on the receiver was shut off; null when not said
 */
public record MachineData(
        @Nullable FlowRate displacement,
        @Nullable Power motorPlate,
        @Nullable Power shaftPower,
        boolean speedFree,
        @Nullable Boolean othersOff) {

    /** A machine of which nothing more is known. */
    public static final MachineData UNKNOWN = new MachineData(null, null, null, false, null);
}
