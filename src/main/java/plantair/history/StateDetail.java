package plantair.history;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.FindingCode;

/**
 * What else the overview shows of a machine's last tests.
 *
 * @param zone id of the time zone of the last test
 * @param freeAirM3PerS its free air delivered; null when its runs were not averaged
 * @param relativeCombined relative standard uncertainty of that flow
 * @param midPressurePa gauge pressure it belongs to
 * @param worst its worst finding; null when there is none
 * @param kept finding that keeps it from the trend; null when none does
 * @param comparedId the last test that joins the trend; null when there is none
 * @param comparedOn day of that test; null when there is none
 * @param baseline whether that test is itself a baseline
 * @param dots the last tests with a flow, oldest first
 */
public record StateDetail(
        String zone,
        @Nullable Double freeAirM3PerS,
        double relativeCombined,
        double midPressurePa,
        @Nullable FindingCode worst,
        @Nullable FindingCode kept,
        @Nullable Long comparedId,
        @Nullable LocalDate comparedOn,
        boolean baseline,
        List<Dot> dots) {

    public StateDetail {
        dots = List.copyOf(dots);
    }

    /**
     * A test in the small line.
     *
     * @param date its day
     * @param part of the baseline that counts for it
     * @param joins whether it joins the trend
     */
    public record Dot(LocalDate date, double part, boolean joins) {}
}
