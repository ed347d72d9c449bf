package plantair.maintenance;

import java.time.LocalDate;
import java.util.UUID;

/**
 * A maintenance event before it is recorded.
 *
 * @param submission made by the form, so that a form sent twice is one event
 * @param compressorId the machine
 * @param happenedOn day of the work, at the site
 * @param kind what was done
 * @param mayStep whether it may have changed the output, so that the trend allows for a step here
 * @param doneBy who did it, may be empty
 * @param note free text; never empty for {@link EventKind#OTHER}
 */
public record EventDraft(
        UUID submission,
        long compressorId,
        LocalDate happenedOn,
        EventKind kind,
        boolean mayStep,
        String doneBy,
        String note) {}
