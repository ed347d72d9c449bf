package plantair.pumpup;

import org.jspecify.annotations.Nullable;
import plantair.quantity.Elapsed;
import plantair.quantity.GaugePressure;
import plantair.quantity.Temperature;

/**
 * One timed run.
 *
 * @param start pressure at the start of the clock
 * @param stop pressure at the stop of the clock, above start
 * @param elapsed time between them
 * @param startAir receiver air at the start; null when not measured
 * @param stopAir receiver air at the stop; null when not measured
 * @param settled pressure after waiting, above start; null when not taken
 * @param settledAir receiver air after waiting; null when not taken
 */
public record RunReadings(
        GaugePressure start,
        GaugePressure stop,
        Elapsed elapsed,
        @Nullable Temperature startAir,
        @Nullable Temperature stopAir,
        @Nullable GaugePressure settled,
        @Nullable Temperature settledAir) {

    /** @throws IllegalArgumentException when stop or settled is not above start */
    public RunReadings {
        if (!(stop.pascals() > start.pascals())) {
            throw new IllegalArgumentException("stop must be above start: " + stop + ", " + start);
        }
        if (settled != null && !(settled.pascals() > start.pascals())) {
            throw new IllegalArgumentException("settled must be above start: " + settled + ", " + start);
        }
    }

    /** A run with pressures and time only. */
    public static RunReadings of(GaugePressure start, GaugePressure stop, Elapsed elapsed) {
        return new RunReadings(start, stop, elapsed, null, null, null, null);
    }

    /** The same run with the air temperature read at both ends. */
    public RunReadings withAir(Temperature atStart, Temperature atStop) {
        return new RunReadings(start, stop, elapsed, atStart, atStop, settled, settledAir);
    }

    /** The same run with a settled reading. */
    public RunReadings withSettled(GaugePressure pressure, Temperature air) {
        return new RunReadings(start, stop, elapsed, startAir, stopAir, pressure, air);
    }

    RunReadings corrected(GaugeAccuracy gauge) {
        return new RunReadings(
                gauge.corrected(start),
                gauge.corrected(stop),
                elapsed,
                startAir,
                stopAir,
                settled == null ? null : gauge.corrected(settled),
                settledAir);
    }
}
