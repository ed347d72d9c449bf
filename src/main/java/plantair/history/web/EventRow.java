package plantair.history.web;

import org.jspecify.annotations.Nullable;
import plantair.web.Status;

/**
 * Work on a machine beside its tests.
 *
 * @param id of the event
 * @param mark its letter in the chart
 * @param date its day
 * @param kind what was done
 * @param note free text, may be empty
 * @param doneBy who did it, may be empty
 * @param verdict whether the output changed; null for work that cannot have changed it
 * @param text the sentence behind it; null with {@code verdict}
 * @param untested whether it may have changed the output and no test came after it
 */
public record EventRow(
        long id,
        String mark,
        String date,
        String kind,
        String note,
        String doneBy,
        @Nullable Status verdict,
        @Nullable String text,
        boolean untested) {}
