package plantair.guided;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Readings of a machine before they are recorded.
 *
 * @param submission made by the form, so that a form sent twice is one record
 * @param compressorId the machine
 * @param testId the test at which they were read; null when there was none
 * @param readAt when
 * @param zone id of the site's time zone
 * @param reader who read them
 * @param figures what was read, something at least
 */
public record ReadingsDraft(
        UUID submission,
        long compressorId,
        @Nullable Long testId,
        Instant readAt,
        String zone,
        String reader,
        MachineFigures figures) {}
