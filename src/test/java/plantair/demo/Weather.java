package plantair.demo;

import java.time.LocalDate;
import java.util.Random;

/**
 * The air at the intake on one day.
 *
 * @param pascals station pressure
 * @param kelvin temperature
 * @param humidity relative, 0 to 1
 */
record Weather(double pascals, double kelvin, double humidity) {

    /**
     * The climate of a compressor room.
     *
     * @param meanPa mean station pressure
     * @param meanK mean temperature of the year
     * @param swingK half the difference of summer and winter
     * @param humidity mean relative humidity
     */
    record Climate(double meanPa, double meanK, double swingK, double humidity) {

        Weather on(LocalDate date, Random random) {
            double season = -StrictMath.cos(2 * Math.PI * (date.getDayOfYear() - 20) / 365.25);
            return new Weather(
                    meanPa * (1 + 0.006 * random.nextGaussian()),
                    meanK + swingK * season + 2 * random.nextGaussian(),
                    Math.min(0.95, Math.max(0.12, humidity + 0.1 * random.nextGaussian())));
        }
    }

    double vapourFraction() {
        return humidity * TrueAir.saturation(kelvin) / pascals;
    }

    /** Kilograms of dry air in a cubic metre of free air. */
    double dryDensity() {
        return pascals * (1 - vapourFraction()) / (TrueAir.GAS_CONSTANT * kelvin);
    }
}
