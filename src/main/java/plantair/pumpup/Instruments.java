package plantair.pumpup;

import org.jspecify.annotations.Nullable;
import plantair.statistics.TypeB;

/**
 * What the instruments of a test can be trusted with, standard uncertainties.
 *
 * @param gauge the pressure gauge; null when none was named
 * @param clockU of a run's time, starting and stopping by hand while watching a needle, s
 * @param thermometerU of an air temperature, K
 * @param barometerU of a station pressure that was read, Pa
 */
public record Instruments(@Nullable GaugeAccuracy gauge, double clockU, double thermometerU, double barometerU) {

    /** One place does not show the mean of the air in a receiver, however good the thermometer; our own. */
    private static final double PLACE_U_K = 1;

    /** Instruments of which nothing is known; our own defaults (docs/method.md, M20). */
    public static final Instruments UNNAMED = new Instruments(null, 0.3, 2, 500);

    /** @throws IllegalArgumentException when an uncertainty is not above zero */
    public Instruments {
        if (!(clockU > 0 && thermometerU > 0 && barometerU > 0)) {
            throw new IllegalArgumentException("uncertainties must be positive");
        }
    }

    /**
     * Instruments with these limits of error; a default where nothing is known.
     *
     * @param gauge the pressure gauge; null when none was named
     * @param clockLimit largest error of the clock itself, s; null when not known. The hand on it counts besides.
     * @param thermometerLimit largest error of the thermometer, K; null when not known
     * @param barometerLimit largest error of the barometer, Pa; null when not known
     */
    public static Instruments of(
            @Nullable GaugeAccuracy gauge,
            @Nullable Double clockLimit,
            @Nullable Double thermometerLimit,
            @Nullable Double barometerLimit) {
        return new Instruments(
                gauge,
                clockLimit == null ? UNNAMED.clockU : StrictMath.hypot(UNNAMED.clockU, TypeB.rectangular(clockLimit)),
                thermometerLimit == null
                        ? UNNAMED.thermometerU
                        : StrictMath.hypot(PLACE_U_K, TypeB.rectangular(thermometerLimit)),
                barometerLimit == null ? UNNAMED.barometerU : TypeB.rectangular(barometerLimit));
    }
}
