package plantair.leaktest;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.register.Changes;
import plantair.web.NoSuchRecord;
import plantair.web.StaleRecord;

/** Records found leaks, and what becomes of each. */
@Service
public class RecordFoundLeak {

    private final FoundLeaks leaks;
    private final LeakSteps steps;
    private final Changes changes;
    private final Clock clock;

    RecordFoundLeak(FoundLeaks leaks, LeakSteps steps, Changes changes, Clock clock) {
        this.leaks = leaks;
        this.steps = steps;
        this.changes = changes;
        this.clock = clock;
    }

    /** Records a leak; the same submission a second time gives that of the first. */
    @Transactional
    public FoundLeak record(FoundLeakDraft draft, String by) {
        Optional<FoundLeak> again = leaks.findBySubmission(draft.submission());
        if (again.isPresent()) {
            return again.get();
        }
        FoundLeak saved = leaks.saveAndFlush(new FoundLeak(draft, clock.instant(), by));
        write(saved, null, saved.lines(), by, "recorded");
        return saved;
    }

    /**
     * Records a step; the same submission a second time gives that of the first.
     *
     * @throws StaleRecord when another step came since the form was opened
     */
    @Transactional
    public LeakStep record(LeakStep.Draft draft, String by) {
        FoundLeak leak = leaks.findLockedById(draft.leakId())
                .orElseThrow(() -> new NoSuchRecord("found leak " + draft.leakId()));
        Optional<LeakStep> again = steps.findBySubmission(draft.submission());
        if (again.isPresent()) {
            return again.get();
        }
        List<LeakStep> before = steps.findByLeakIdOrderByPosition(leak.id());
        LeakStep last = before.isEmpty() ? null : before.get(before.size() - 1);
        if (before.size() != draft.position() || !LeakStanding.of(last).mayBecome(draft.kind())) {
            throw new StaleRecord("found leak " + leak.id(), last == null ? null : later(last));
        }
        LeakStep saved = steps.saveAndFlush(new LeakStep(draft, clock.instant(), by));
        write(leak, last == null ? null : last.lines(), saved.lines(), by, reason(draft));
        return saved;
    }

    private static String reason(LeakStep.Draft draft) {
        return draft.kind() == StepKind.WITHDRAWN ? draft.note() : "recorded";
    }

    private static StaleRecord.Later later(LeakStep last) {
        return new StaleRecord.Later(
                "/leaks/" + last.leakId(), last.recordedBy(), last.recordedAt(), String.valueOf(last.kind()));
    }

    private void write(FoundLeak leak, @Nullable String before, String after, String by, String reason) {
        changes.save(new ChangeRecord(
                clock.instant(), by, ChangeKind.FOUND_LEAK, leak.id(), leak.tag(), before, after, reason));
    }
}
