package plantair.pumpup;

import plantair.quantity.AbsolutePressure;
import plantair.quantity.RelativeHumidity;
import plantair.quantity.Temperature;

/**
 * The free air that the compressor takes in.
 *
 * @param station barometric pressure at the place, not reduced to sea level
 * @param temperature intake air
 * @param humidity intake air
 */
public record Intake(AbsolutePressure station, Temperature temperature, RelativeHumidity humidity) {

    /** @throws IllegalArgumentException when the vapour alone would reach the station pressure */
    public Intake {
        if (!(humidity.fraction() * SaturationPressure.at(temperature).pascals() < station.pascals())) {
            throw new IllegalArgumentException("vapour pressure reaches the station pressure");
        }
    }

    /** Partial pressure of water vapour φ e_s(Ta), Pa. */
    public double vapourPa() {
        return humidity.fraction() * SaturationPressure.at(temperature).pascals();
    }

    /** Partial pressure of the dry air Pa − φ e_s(Ta), Pa. */
    public double dryPa() {
        return station.pascals() - vapourPa();
    }

    /** Mole fraction of vapour x = φ e_s(Ta)/Pa (M5). */
    public double vapourFraction() {
        return vapourPa() / station.pascals();
    }
}
