package plantair.pumpup;

import org.jspecify.annotations.Nullable;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Temperature;
import plantair.quantity.VesselVolume;

/**
 * What is filled in a test, and with which air.
 *
 * @param volume net volume, above zero
 * @param intake air at the intake
 * @param receiverAir temperature of the air in the receiver while it is filled; null when it was not measured
 * @param compressibility of that air
 */
public record ShutVolume(
        VesselVolume volume, Intake intake, @Nullable Temperature receiverAir, Compressibility compressibility) {

    /** @throws IllegalArgumentException when the volume is not above zero */
    public ShutVolume {
        if (!(volume.cubicMetres() > 0)) {
            throw new IllegalArgumentException("volume must be positive: " + volume);
        }
    }

    /**
     * Growth of the content C = D/(Z T) with pressure at one temperature, 1/K: [D' − D (Z − 1)/(P Z)]/(Z T), where D' is 1
     * once the vapour is saturated and 1 − x before (M5, M6).
     */
    static double growth(AbsolutePressure at, Temperature air, Intake intake, Compressibility compressibility) {
        ReceiverState state = ReceiverState.of(at, air, intake, compressibility);
        boolean saturated = intake.vapourFraction() * at.pascals()
                > SaturationPressure.at(air).pascals();
        double ofDryAir = saturated ? 1 : 1 - intake.vapourFraction();
        double ofZ = state.dryPa() * (state.z() - 1) / (at.pascals() * state.z());
        return (ofDryAir - ofZ) / (state.z() * air.kelvin());
    }
}
