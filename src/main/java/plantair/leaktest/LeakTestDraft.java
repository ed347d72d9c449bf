package plantair.leaktest;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import plantair.testrecord.VolumeCopy;

/**
 * A leak test whose every reading could be understood, not yet recorded.
 *
 * @param submission made by the form, so that a form sent twice is one test
 * @param siteId the site
 * @param compressorId the machine whose test volume was shut; null for a test of the system
 * @param kind how it was measured
 * @param place what was shut
 * @param performedAt when
 * @param zone id of the site's time zone
 * @param tester who
 * @param state of the system
 * @param cycles of load times; empty else
 * @param machines that ran; empty for a fall
 * @param readings of a fall: two, or four and more; empty else
 * @param volumes that were shut; empty when the volume was typed
 * @param note free text, may be empty
 * @param confirmed codes of what looked unlikely and was confirmed, may be empty
 */
public record LeakTestDraft(
        UUID submission,
        long siteId,
        @Nullable Long compressorId,
        LeakTestKind kind,
        LeakPlace place,
        Instant performedAt,
        String zone,
        String tester,
        LeakState state,
        List<CycleEntry> cycles,
        List<MachineCopy> machines,
        List<FallReading> readings,
        List<VolumeCopy> volumes,
        String note,
        String confirmed) {

    public LeakTestDraft {
        cycles = List.copyOf(cycles);
        machines = List.copyOf(machines);
        readings = List.copyOf(readings);
        volumes = List.copyOf(volumes);
    }

    /** The same under another submission. */
    public LeakTestDraft with(UUID otherSubmission) {
        return with(otherSubmission, confirmed);
    }

    /** The same with the codes of what was confirmed. */
    public LeakTestDraft withConfirmed(String codes) {
        return with(submission, codes);
    }

    private LeakTestDraft with(UUID mark, String codes) {
        return new LeakTestDraft(
                mark,
                siteId,
                compressorId,
                kind,
                place,
                performedAt,
                zone,
                tester,
                state,
                cycles,
                machines,
                readings,
                volumes,
                note,
                codes);
    }
}
