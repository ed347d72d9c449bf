package plantair.history.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.web.Status;

/**
 * The card of a machine, all text ready.
 *
 * @param compressorId the machine
 * @param tag how the plant calls it
 * @param site its site
 * @param obstacle key of why there is no card; null when there is one
 * @param gaugeChanged whether later tests were read with another gauge
 * @param face what is printed; null when there is no card
 */
public record CardView(
        long compressorId,
        String tag,
        String site,
        @Nullable String obstacle,
        boolean gaugeChanged,
        @Nullable Face face) {

    /**
     * What is printed.
     *
     * @param from first mark as typed
     * @param to second mark as typed
     * @param gauge tag; null when the baseline test names none
     * @param volumes what is filled
     * @param baseline time of the baseline
     * @param steps the limits
     * @param warmer percent by which five kelvin shorten it
     * @param conditions of the baseline test: intake and station pressure
     * @param speed read in the baseline test; null when it was not
     * @param testId the baseline test
     * @param testedOn its day
     * @param printedOn today
     */
    public record Face(
            String from,
            String to,
            @Nullable String gauge,
            String volumes,
            String baseline,
            List<Step> steps,
            String warmer,
            String conditions,
            @Nullable String speed,
            long testId,
            String testedOn,
            String printedOn) {}

    /** A limit: what it asks for, from which time on, and the percent of baseline that it stands for. */
    public record Step(Status word, String time, String percent) {}
}
