package plantair.history;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.equipment.Compressor;
import plantair.quantity.AbsolutePressure;
import plantair.testrecord.PumpUpTest;
import plantair.testrecord.VolumeCopy;
import plantair.trend.Limits;
import plantair.trend.PassByTime;

/**
 * What goes on the card at a machine.
 *
 * @param compressor the machine
 * @param obstacle why there can be no card; null when there is one
 * @param baseline the baseline test, its runs and instruments read; null without one
 * @param gaugeChanged whether the newest test was read with another gauge
 * @param volumes what the baseline test filled
 * @param times from mark to mark; null when there can be no card
 * @param shorterPerKelvin part by which warmer air at the stop shortens them
 * @param station pressure of the baseline test; null when there can be no card
 * @param limits of the plant
 * @param today at the site
 */
public record PassByCard(
        Compressor compressor,
        @Nullable Obstacle obstacle,
        @Nullable PumpUpTest baseline,
        boolean gaugeChanged,
        List<VolumeCopy> volumes,
        @Nullable PassByTime times,
        double shorterPerKelvin,
        @Nullable AbsolutePressure station,
        Limits limits,
        LocalDate today) {

    /** Why there can be no card. */
    public enum Obstacle {
        /** No test can be a baseline. */
        NO_BASELINE,
        /** The runs of the baseline test were made between different marks. */
        MARKS_DIFFER,
        /** The gauge of the baseline test was found wrong afterwards, so its marks mean other pressures. */
        GAUGE_FOUND_WRONG
    }
}
