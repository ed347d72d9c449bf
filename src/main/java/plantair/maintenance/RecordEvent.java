package plantair.maintenance;

import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.equipment.Compressor;
import plantair.equipment.CompressorFollower;
import plantair.equipment.Compressors;
import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.register.Changes;
import plantair.web.NoSuchRecord;
import plantair.web.StaleRecord;

/** Records a maintenance event, a correction or a withdrawal of one, and tells those who follow the compressor. */
@Service
public class RecordEvent {

    private final MaintenanceEvents events;
    private final Compressors compressors;
    private final Changes changes;
    private final Clock clock;
    private final ObjectProvider<CompressorFollower> followers;

    RecordEvent(
            MaintenanceEvents events,
            Compressors compressors,
            Changes changes,
            Clock clock,
            ObjectProvider<CompressorFollower> followers) {
        this.events = events;
        this.compressors = compressors;
        this.changes = changes;
        this.clock = clock;
        this.followers = followers;
    }

    /**
     * Records an event; the same submission a second time gives that of the first.
     *
     * @throws NoSuchRecord when there is no such compressor
     */
    @Transactional
    public MaintenanceEvent record(EventDraft draft, String by) {
        Compressor compressor = lock(draft.compressorId());
        return events.findBySubmission(draft.submission()).orElseGet(() -> save(draft, compressor, null, by, null));
    }

    /**
     * Records a correction. The old event stays as it is.
     *
     * @param draft of the same compressor
     * @throws StaleRecord when another correction or a withdrawal came first
     */
    @Transactional
    public MaintenanceEvent supersede(MaintenanceEvent old, EventDraft draft, String reason, String by) {
        if (draft.compressorId() != old.compressorId()) {
            throw new IllegalArgumentException("compressor " + draft.compressorId() + " for " + old.compressorId());
        }
        return replace(old, draft, new MaintenanceEvent.Correction(old.id(), reason, false), by);
    }

    /**
     * Records that an event did not happen. The old one stays as it is, and the withdrawal can be corrected like any
     * other.
     *
     * @param submission made by the form, so that a form sent twice is one withdrawal
     * @throws StaleRecord when a correction or another withdrawal came first
     */
    @Transactional
    public MaintenanceEvent withdraw(MaintenanceEvent old, UUID submission, String reason, String by) {
        return replace(old, old.draft(submission), new MaintenanceEvent.Correction(old.id(), reason, true), by);
    }

    private MaintenanceEvent replace(
            MaintenanceEvent old, EventDraft draft, MaintenanceEvent.Correction correction, String by) {
        Compressor compressor = lock(old.compressorId());
        Optional<MaintenanceEvent> again = events.findBySubmission(draft.submission());
        if (again.isPresent()) {
            return again.get();
        }
        Optional<MaintenanceEvent> later = events.findBySupersedesId(old.id());
        if (later.isPresent() || old.isWithdrawn() && correction.withdraws()) {
            throw new StaleRecord("maintenance event " + old.id(), later(later.orElse(old)));
        }
        return save(draft, compressor, old, by, correction);
    }

    private static StaleRecord.Later later(MaintenanceEvent event) {
        String page = "/compressors/" + event.compressorId() + "/events";
        return new StaleRecord.Later(page, event.recordedBy(), event.recordedAt(), String.valueOf(event.reason()));
    }

    private Compressor lock(long compressorId) {
        return compressors
                .findLockedById(compressorId)
                .orElseThrow(() -> new NoSuchRecord("compressor " + compressorId));
    }

    private MaintenanceEvent save(
            EventDraft draft,
            Compressor compressor,
            @Nullable MaintenanceEvent old,
            String by,
            MaintenanceEvent.@Nullable Correction correction) {
        MaintenanceEvent event = events.saveAndFlush(new MaintenanceEvent(draft, clock.instant(), by, correction));
        followers.orderedStream().forEach(follower -> follower.changed(event.compressorId()));
        changes.save(new ChangeRecord(
                clock.instant(),
                by,
                ChangeKind.EVENT,
                event.id(),
                compressor.tag(),
                old == null ? null : old.lines(),
                event.lines(),
                correction == null ? "event recorded" : correction.reason()));
        return event;
    }
}
