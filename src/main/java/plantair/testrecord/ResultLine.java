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
 * @param severity of the worst finding; null when there is none
 * @param joinsTrend false when the test does not show the machine's wear
 */
public record ResultLine(
        long testId,
        long compressorId,
        Instant performedAt,
        String zone,
        @Nullable Double comparableM3PerS,
        double relativeRandom,
        @Nullable Severity severity,
        boolean joinsTrend) {

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
}
