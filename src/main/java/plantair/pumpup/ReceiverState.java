package plantair.pumpup;

import plantair.quantity.AbsolutePressure;
import plantair.quantity.Temperature;

/**
 * The air in the receiver at one instant (M5, M6).
 *
 * @param pressure absolute
 * @param temperature of the air, not of the shell
 * @param dryPa partial pressure of dry air D(P,T) = P − min(x P, e_s(T)): vapour above saturation has condensed, Pa
 * @param z compressibility factor
 * @param content D/(Z T), Pa/K; the dry mass is this times V/R
 */
public record ReceiverState(
        AbsolutePressure pressure, Temperature temperature, double dryPa, double z, double content) {

    static ReceiverState of(
            AbsolutePressure pressure, Temperature temperature, Intake intake, Compressibility compressibility) {
        double vapour = Math.min(
                intake.vapourFraction() * pressure.pascals(),
                SaturationPressure.at(temperature).pascals());
        double dry = pressure.pascals() - vapour;
        double z = compressibility.z(pressure, temperature);
        return new ReceiverState(pressure, temperature, dry, z, dry / (z * temperature.kelvin()));
    }
}
