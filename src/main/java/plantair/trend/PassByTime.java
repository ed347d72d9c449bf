package plantair.trend;

import java.util.List;
import plantair.quantity.AbsolutePressure;
import plantair.quantity.Elapsed;
import plantair.quantity.PressureDifference;
import plantair.quantity.Temperature;

/**
 * How long the pressure takes from mark to mark at the baseline and at each limit (T15): t = t0/part. Good for the marks,
 * volume, gauge and conditions of the baseline test only. The times of the limits are rounded down, so that a machine at its
 * limit is never waved through; a time too many costs no more than a proper test.
 *
 * <p>Checked by: PassByTimeTests.
 *
 * @param baseline mean of the runs of the baseline test
 * @param watch from this time on, below the limit for watching
 * @param plan from this time on, below the limit for planning
 * @param act from this time on, below the limit for acting
 */
public record PassByTime(Elapsed baseline, Elapsed watch, Elapsed plan, Elapsed act) {

    /** A whole second is more than 3 % of a shorter time; those are told to a tenth. */
    private static final double WHOLE_FROM_S = 30;

    /** Keeps 63.000 from being 62, where the division is off in the last place. */
    private static final double NEARLY = 1e-9;

    /**
     * A run of the baseline test.
     *
     * @param elapsed time between its marks
     * @param rise between them, above zero
     */
    public record Run(Elapsed elapsed, PressureDifference rise) {

        /** @throws IllegalArgumentException when the rise is not above zero */
        public Run {
            if (!(rise.pascals() > 0)) {
                throw new IllegalArgumentException("rise must be positive: " + rise);
            }
        }
    }

    /**
     * The times of a machine (T15). Where the runs were stopped a division apart, their times are brought to the rise of the
     * card in proportion.
     *
     * @param runs of the baseline test
     * @param rise from mark to mark of the card
     * @throws IllegalArgumentException when there is no run
     */
    public static PassByTime of(List<Run> runs, PressureDifference rise, Limits limits) {
        if (runs.isEmpty()) {
            throw new IllegalArgumentException("at least one run is needed");
        }
        double sum = 0;
        for (Run run : runs) {
            sum += run.elapsed().seconds() * rise.pascals() / run.rise().pascals();
        }
        double mean = sum / runs.size();
        return new PassByTime(
                new Elapsed(mean),
                at(limits.watchBelow(), mean),
                at(limits.planBelow(), mean),
                at(limits.actBelow(), mean));
    }

    private static Elapsed at(int percent, double baseline) {
        double steps = baseline < WHOLE_FROM_S ? 10 : 1;
        double seconds = baseline * 100 / percent;
        return new Elapsed(Math.floor(seconds * steps * (1 + NEARLY)) / steps);
    }

    /**
     * Part by which the time gets shorter for each kelvin that the receiver air is warmer at the stop, when it was as warm
     * as the intake: P2/((P2 − P1) T). The sensitivity to T2 of M20.
     *
     * @param start at the first mark
     * @param stop at the second, above the first
     * @param air of the receiver
     * @return for each kelvin; 0.02 is 2 %
     * @throws IllegalArgumentException when the stop is not above the start
     */
    public static double shorterPerKelvin(AbsolutePressure start, AbsolutePressure stop, Temperature air) {
        double rise = stop.pascals() - start.pascals();
        if (!(rise > 0)) {
            throw new IllegalArgumentException("stop must be above start: " + stop + ", " + start);
        }
        return stop.pascals() / (rise * air.kelvin());
    }
}
