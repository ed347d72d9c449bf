package plantair.export;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;
import plantair.testrecord.PumpUpTest;

/**
 * Which tests go into a file.
 *
 * @param siteId tests of this site only; 0 for all
 * @param compressorId tests of this machine only; 0 for all
 * @param from first day, where the test was made; null for no limit
 * @param to last day, where the test was made; null for no limit
 */
public record ExportFilter(
        long siteId,
        long compressorId,
        @Nullable LocalDate from,
        @Nullable LocalDate to) {

    /** Before any test and after any, within what both databases can hold. */
    private static final LocalDate EARLIEST = LocalDate.of(1000, 1, 1);

    private static final LocalDate LATEST = LocalDate.of(9999, 12, 1);

    /** Before the first moment of the first day in any zone. */
    Instant earliest() {
        return (from == null ? EARLIEST : from).minusDays(1).atStartOfDay().toInstant(ZoneOffset.UTC);
    }

    /** After the last moment of the last day in any zone. */
    Instant latest() {
        return (to == null || to.isAfter(LATEST) ? LATEST : to)
                .plusDays(2)
                .atStartOfDay()
                .toInstant(ZoneOffset.UTC);
    }

    /** Whether the day of the test, where it was made, is one of those asked for. */
    boolean holds(PumpUpTest test) {
        return holds(test.performedAt().atZone(test.zone()).toLocalDate());
    }

    /** Whether a day is one of those asked for. */
    boolean holds(LocalDate day) {
        return !(from != null && day.isBefore(from) || to != null && day.isAfter(to));
    }
}
