package plantair.testrecord;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;

/**
 * What a test guided at the machine keeps beside its readings.
 *
 * @param drained liquid that came out of the receiver before the runs
 * @param afterStop what was heard after the machine stopped
 * @param steps what was ticked and timed, one a line, times by the clock of the device
 * @param deviceRecordedAt when it was finished, by the clock of the device
 * @param deviceOffsetMs server clock less device clock when it was sent, in milliseconds
 */
@Embeddable
public record GuideLog(
        @Nullable Entered drained,
        @Enumerated(EnumType.STRING) @Nullable AfterStop afterStop,
        @Nullable String steps,
        @Nullable Instant deviceRecordedAt,
        @Nullable Integer deviceOffsetMs) {

    /** What was heard at the unloader after the machine stopped. */
    public enum AfterStop {
        /** A short vent, then silence. */
        SILENT,
        /** A hiss that goes on: air comes back through the check valve. */
        HISSES,
        /** Could not be heard, or nobody listened. */
        NOT_HEARD
    }
}
