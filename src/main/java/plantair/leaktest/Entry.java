package plantair.leaktest;

import jakarta.persistence.Embeddable;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Who recorded a leak test, and what it takes the place of.
 *
 * @param recordedAt when
 * @param recordedBy who
 * @param supersedesId the one that it corrects; null when it is the first
 * @param reason why it does; null when it is the first
 * @param withdrawn whether it says that the other does not count
 */
@Embeddable
public record Entry(
        Instant recordedAt,
        String recordedBy,
        @Nullable Long supersedesId,
        @Nullable String reason,
        boolean withdrawn) {

    /** A first record, or a correction. */
    static Entry of(Instant at, String by, @Nullable Correction correction) {
        return correction == null
                ? new Entry(at, by, null, null, false)
                : new Entry(at, by, correction.oldId(), correction.reason(), correction.withdraws());
    }

    /**
     * Why a test takes the place of another.
     *
     * @param oldId the one it corrects
     * @param reason why
     * @param withdraws whether it says that the other does not count
     */
    public record Correction(long oldId, String reason, boolean withdraws) {}
}
