package plantair.testrecord;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import plantair.pumpup.Severity;
import plantair.quantity.FlowRate;

/**
 * The key figures of a current result, small enough to be read for a whole plant at once.
 *
 * @param testId the test
 * @param compressorId its machine
 * @param performedAt when it was made
 * @param zone id of the time zone of the test
 * @param comparableM3PerS free air delivered for comparison over time; null when the runs were not averaged
 * @param relativeRandom relative standard uncertainty from what differs between tests
 * @param relativeCombined relative standard uncertainty from everything
 * @param severity of the worst finding; null when there is none
 * @param joinsTrend false when the test does not show the machine's wear
 * @param restatedBy the calibration that restates it; null when it is as recorded
 * @param freeAirM3PerS free air delivered at the speed of the test; null when the runs were not averaged
 * @param asRecordedM3PerS the same before the gauge was found wrong; null when it is as recorded or had no average
 * @param marks between which it was made, and the errors it shares with other tests
 */
public record ResultLine(
        long testId,
        long compressorId,
        Instant performedAt,
        String zone,
        @Nullable Double comparableM3PerS,
        double relativeRandom,
        double relativeCombined,
        @Nullable Severity severity,
        boolean joinsTrend,
        @Nullable Long restatedBy,
        @Nullable Double freeAirM3PerS,
        @Nullable Double asRecordedM3PerS,
        TestMarks marks) {

    /** The day of the test where it was made. */
    public LocalDate date() {
        return performedAt.atZone(zoneId()).toLocalDate();
    }

    /** The time zone of the test. */
    public ZoneId zoneId() {
        return ZoneId.of(zone);
    }

    /** Free air delivered, at rated speed when that is known; empty when the runs were not averaged. */
    public Optional<FlowRate> comparable() {
        return Optional.ofNullable(comparableM3PerS).map(FlowRate::new);
    }

    /** Free air delivered at the speed of the test; empty when the runs were not averaged. */
    public Optional<FlowRate> freeAir() {
        return Optional.ofNullable(freeAirM3PerS).map(FlowRate::new);
    }

    /** True when the gauge was found wrong afterwards and the figures follow what was found. */
    public boolean isRestated() {
        return restatedBy != null;
    }

    /** What {@link #comparable} was before the gauge was found wrong; empty when it is as recorded or had no average. */
    public Optional<FlowRate> comparableAsRecorded() {
        if (comparableM3PerS == null || freeAirM3PerS == null || asRecordedM3PerS == null) {
            return Optional.empty();
        }
        // the part of rated speed does not depend on the gauge
        return Optional.of(
                new FlowRate(asRecordedM3PerS).times(new FlowRate(comparableM3PerS).over(new FlowRate(freeAirM3PerS))));
    }
}
