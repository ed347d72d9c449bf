package plantair.demo;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import plantair.testrecord.TestDraft;

/**
 * A simulated test as it went into the book, with the truth that nobody saw.
 *
 * @param draft what was written down
 * @param recordedAt when
 * @param trouble what was wrong
 * @param trueFlow what was delivered at the middle of the band, m³/s at the intake
 * @param correction of an earlier test; null for a test by itself
 */
record DemoTest(
        TestDraft draft,
        Instant recordedAt,
        Occasion.Trouble trouble,
        double trueFlow,
        @Nullable Correction correction) {

    /**
     * Why a test takes the place of another.
     *
     * @param supersedes submission of that test
     * @param reason why
     */
    record Correction(UUID supersedes, String reason) {}
}
