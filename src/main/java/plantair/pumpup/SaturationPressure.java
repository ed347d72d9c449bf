package plantair.pumpup;

import plantair.quantity.AbsolutePressure;
import plantair.quantity.Temperature;

/**
 * Pressure of water vapour in balance with liquid water (M4).
 *
 * <p>ln e = −5800.2206/T + 1.3914993 − 0.048640239 T + 4.1764768e-5 T² − 1.4452093e-8 T³ + 6.5459673 ln T, in Pa and K.
 * Valid 0 to 200 °C; below 0 °C it is carried on over (supercooled) water, where the vapour is too thin to matter here.
 * Source: Hyland and Wexler 1983, as in ASHRAE Fundamentals (coefficients from memory).
 *
 * <p>Checked by: HumidAirReferenceTests.
 */
public final class SaturationPressure {

    /** Lowest temperature that is taken, K. */
    static final double LOWEST_K = 223;

    /** Highest temperature that is taken, K. */
    static final double HIGHEST_K = 473.15;

    private SaturationPressure() {}

    /**
     * Saturation pressure at a temperature.
     *
     * @throws IllegalArgumentException outside 223 K to 473 K
     */
    public static AbsolutePressure at(Temperature temperature) {
        double t = temperature.kelvin();
        if (!(t >= LOWEST_K && t <= HIGHEST_K)) {
            throw new IllegalArgumentException("temperature must be 223 to 473 K: " + t);
        }
        double ln = -5.8002206e3 / t
                + 1.3914993
                - 4.8640239e-2 * t
                + 4.1764768e-5 * t * t
                - 1.4452093e-8 * t * t * t
                + 6.5459673 * StrictMath.log(t);
        return new AbsolutePressure(StrictMath.exp(ln));
    }
}
