package plantair.transfer;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An upload on its way: looked through, then taken in when somebody says so.
 *
 * @param id its key
 * @param name name of the file as it was sent
 * @param stage where it is
 * @param progress how many tests are done in this stage
 * @param findings what was found; null while it is looked through
 * @param recorded how many tests were taken in
 * @param orderedBy who said that it be taken in; null before
 */
public record Import(
        UUID id,
        String name,
        Stage stage,
        long progress,
        @Nullable Findings findings,
        long recorded,
        @Nullable String orderedBy) {

    /** Where it is. */
    public enum Stage {
        /** Waits to be looked through. */
        WAITING,
        /** Looked through. */
        CHECKING,
        /** Looked through; waits for the word to take it in. */
        CHECKED,
        /** Waits to be taken in. */
        ORDERED,
        /** Taken in. */
        RECORDING,
        /** All of it is in the records. */
        DONE,
        /** Nothing of it is in the records: something went wrong here. */
        FAILED,
        /** Nothing of it is in the records: the instance that was at it ended. */
        BROKEN_OFF
    }
}
