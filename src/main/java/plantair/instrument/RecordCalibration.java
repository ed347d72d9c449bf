package plantair.instrument;

import java.time.Clock;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.register.Changes;
import plantair.web.StaleRecord;

/** Records a calibration, or a correction of one. */
@Service
public class RecordCalibration {

    private final Calibrations calibrations;
    private final Changes changes;
    private final Clock clock;

    RecordCalibration(Calibrations calibrations, Changes changes, Clock clock) {
        this.calibrations = calibrations;
        this.changes = changes;
        this.clock = clock;
    }

    /** Records a calibration; the same submission a second time gives that of the first. */
    @Transactional
    public Calibration record(CalibrationDraft draft, String by) {
        return calibrations.findBySubmission(draft.submission()).orElseGet(() -> save(draft, by, null));
    }

    /**
     * Records a correction. The old calibration stays as it is.
     *
     * @throws StaleRecord when another correction came first
     */
    @Transactional
    public Calibration supersede(Calibration old, CalibrationDraft draft, String reason, String by) {
        var again = calibrations.findBySubmission(draft.submission());
        if (again.isPresent()) {
            return again.get();
        }
        calibrations.findBySupersedesId(old.id()).ifPresent(later -> {
            String page = "/instruments/" + old.instrument().id();
            throw new StaleRecord(
                    "calibration " + old.id(),
                    new StaleRecord.Later(
                            page, later.recordedBy(), later.recordedAt(), String.valueOf(later.reason())));
        });
        Calibration calibration = save(draft, by, new Calibration.Correction(old.id(), reason));
        changes.save(new ChangeRecord(
                clock.instant(),
                by,
                ChangeKind.INSTRUMENT,
                draft.instrument().id(),
                draft.instrument().facts().tag(),
                "calibration " + old.id() + " of " + old.doneOn(),
                "superseded by calibration " + calibration.id() + " of " + calibration.doneOn(),
                reason));
        return calibration;
    }

    private Calibration save(CalibrationDraft draft, String by, Calibration.@Nullable Correction correction) {
        Calibration calibration = calibrations.saveAndFlush(new Calibration(draft, clock.instant(), by, correction));
        changes.save(new ChangeRecord(
                clock.instant(),
                by,
                ChangeKind.CALIBRATION,
                calibration.id(),
                draft.instrument().facts().tag(),
                null,
                "calibration of " + calibration.doneOn() + ", certificate "
                        + calibration.certificate().certificateNumber(),
                correction == null ? "calibration recorded" : correction.reason()));
        return calibration;
    }
}
