package plantair.vessel;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;

/**
 * A test of a relief valve before it is recorded.
 *
 * @param submission made by the form, so that a form sent twice is one test
 * @param valveId the valve
 * @param doneOn day of the test
 * @param method how
 * @param poppedAt pressure at which it opened, gauge; null when it was not read
 * @param passed the result
 * @param doneBy who did it
 * @param note free text, may be empty
 */
public record ValveTestDraft(
        UUID submission,
        long valveId,
        LocalDate doneOn,
        TestMethod method,
        @Nullable Entered poppedAt,
        boolean passed,
        String doneBy,
        String note) {}
