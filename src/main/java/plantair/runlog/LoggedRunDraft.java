package plantair.runlog;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import plantair.testrecord.InstrumentCopy;

/**
 * A run to be recorded as a logger saw it.
 *
 * @param submission made by the form, so that a form sent twice is one record
 * @param testId the test whose volume, station and air it has
 * @param fileName name of the file, fit to be shown
 * @param choices how the file is read
 * @param logger the instrument as its register has it; null when none is named
 * @param note free text, may be empty
 */
public record LoggedRunDraft(
        UUID submission,
        long testId,
        String fileName,
        LogChoices choices,
        @Nullable InstrumentCopy logger,
        String note) {}
