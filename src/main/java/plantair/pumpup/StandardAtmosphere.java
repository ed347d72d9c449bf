package plantair.pumpup;

import plantair.quantity.AbsolutePressure;
import plantair.quantity.Length;

/**
 * Station pressure from elevation (M3): Pa = 101325 (1 − 2.25577e-5 h)^5.25588.
 *
 * <p>The mean atmosphere, not the weather of the day, which moves it by about ±2 %. Valid from −500 m to 11,000 m.
 * Source: US Standard Atmosphere 1976 in the form of ASHRAE Fundamentals, psychrometrics chapter.
 *
 * <p>Checked by: AtmosphereReferenceTests.
 */
public final class StandardAtmosphere {

    private static final double SEA_LEVEL_PA = 101_325;
    private static final double LOWEST_M = -500;
    private static final double HIGHEST_M = 11_000;

    private StandardAtmosphere() {}

    /**
     * Mean station pressure.
     *
     * @param elevation above sea level, −500 m to 11,000 m
     * @throws IllegalArgumentException outside that range
     */
    public static AbsolutePressure stationPressure(Length elevation) {
        double h = elevation.metres();
        if (!(h >= LOWEST_M && h <= HIGHEST_M)) {
            throw new IllegalArgumentException("elevation must be -500 to 11000 m: " + h);
        }
        return new AbsolutePressure(SEA_LEVEL_PA * StrictMath.pow(1 - 2.25577e-5 * h, 5.25588));
    }
}
