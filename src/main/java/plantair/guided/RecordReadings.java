package plantair.guided;

import java.time.Clock;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.equipment.Compressor;
import plantair.equipment.Compressors;
import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.register.Changes;
import plantair.web.NoSuchRecord;
import plantair.web.StaleRecord;

/** Records the readings of a machine, or a correction of them. */
@Service
public class RecordReadings {

    private final ReadingsLog log;
    private final Compressors compressors;
    private final Changes changes;
    private final Clock clock;

    RecordReadings(ReadingsLog log, Compressors compressors, Changes changes, Clock clock) {
        this.log = log;
        this.compressors = compressors;
        this.changes = changes;
        this.clock = clock;
    }

    /** Records readings; the same submission a second time gives those of the first. */
    @Transactional
    public MachineReadings record(ReadingsDraft draft, String by) {
        Compressor compressor = lock(draft.compressorId());
        return log.findBySubmission(draft.submission()).orElseGet(() -> save(draft, compressor, null, null, by));
    }

    /**
     * Records a correction. The old readings stay as they are.
     *
     * @throws StaleRecord when another correction came first
     */
    @Transactional
    public MachineReadings supersede(MachineReadings old, ReadingsDraft draft, String reason, String by) {
        Compressor compressor = lock(old.compressorId());
        var again = log.findBySubmission(draft.submission());
        if (again.isPresent()) {
            return again.get();
        }
        log.findBySupersedesId(old.id()).ifPresent(later -> {
            throw new StaleRecord(
                    "readings " + old.id(),
                    new StaleRecord.Later(
                            "/guided/readings/" + later.id(),
                            later.recordedBy(),
                            later.recordedAt(),
                            String.valueOf(later.reason())));
        });
        return save(draft, compressor, old, new MachineReadings.Correction(old.id(), reason), by);
    }

    private Compressor lock(long compressorId) {
        return compressors
                .findLockedById(compressorId)
                .orElseThrow(() -> new NoSuchRecord("compressor " + compressorId));
    }

    private MachineReadings save(
            ReadingsDraft draft,
            Compressor compressor,
            @Nullable MachineReadings old,
            MachineReadings.@Nullable Correction correction,
            String by) {
        MachineReadings readings = log.saveAndFlush(new MachineReadings(draft, clock.instant(), by, correction));
        changes.save(new ChangeRecord(
                clock.instant(),
                by,
                ChangeKind.READINGS,
                readings.id(),
                compressor.tag(),
                old == null ? null : old.lines(),
                readings.lines(),
                correction == null ? "readings recorded" : correction.reason()));
        return readings;
    }
}
