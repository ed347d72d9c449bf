package plantair.pumpup;

import org.jspecify.annotations.Nullable;

/**
 * What the instruments of a test can be trusted with, standard uncertainties.
 *
 * @param gauge the pressure gauge; null when none was named
 * @param clockU of a run's time, starting and stopping by hand while watching a needle, s
 * @param thermometerU of an air temperature, K
 * @param barometerU of a station pressure that was read, Pa
 */
public record Instruments(@Nullable GaugeAccuracy gauge, double clockU, double thermometerU, double barometerU) {

    /** Instruments of which nothing is known; our own defaults (docs/method.md, M20). */
    public static final Instruments UNNAMED = new Instruments(null, 0.3, 2, 500);

    /** @throws IllegalArgumentException when an uncertainty is not above zero */
    public Instruments {
        if (!(clockU > 0 && thermometerU > 0 && barometerU > 0)) {
            throw new IllegalArgumentException("uncertainties must be positive");
        }
    }
}
