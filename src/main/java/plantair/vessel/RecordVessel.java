package plantair.vessel;

import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import plantair.equipment.Receivers;
import plantair.register.ChangeKind;
import plantair.register.ChangeRecord;
import plantair.register.Changes;
import plantair.vessel.Entry.Correction;
import plantair.web.NoSuchRecord;
import plantair.web.StaleRecord;

/** Records what is only ever added of a receiver: tests of its valves, inspections, damage and its mending. */
@Service
public class RecordVessel {

    private final Receivers receivers;
    private final ReliefValves valves;
    private final ValveTests tests;
    private final Inspections inspections;
    private final VesselFindings findings;
    private final Changes changes;
    private final Clock clock;

    RecordVessel(
            Receivers receivers,
            ReliefValves valves,
            ValveTests tests,
            Inspections inspections,
            VesselFindings findings,
            Changes changes,
            Clock clock) {
        this.receivers = receivers;
        this.valves = valves;
        this.tests = tests;
        this.inspections = inspections;
        this.findings = findings;
        this.changes = changes;
        this.clock = clock;
    }

    /**
     * Records a test of a valve; the same submission a second time gives that of the first.
     *
     * @param correction null unless it takes the place of another, which stays as it is
     * @throws StaleRecord when another correction came first
     */
    @Transactional
    public ValveTest record(ValveTestDraft draft, @Nullable Correction correction, String by) {
        Optional<ValveTest> again = tests.findBySubmission(draft.submission());
        if (again.isPresent()) {
            return again.get();
        }
        ReliefValve valve = valves.findWithReceiver(draft.valveId())
                .orElseThrow(() -> new NoSuchRecord("relief valve " + draft.valveId()));
        ValveTest old =
                correction == null ? null : tests.findById(correction.oldId()).orElseThrow();
        if (old != null) {
            tests.findByEntrySupersedesId(old.id())
                    .ifPresent(later -> refuse(valve.receiver().id(), later.entry()));
        }
        Instant now = clock.instant();
        ValveTest saved = tests.saveAndFlush(new ValveTest(draft, Entry.of(now, by, correction)));
        String name = valve.receiver().facts().tag() + ", " + valve.facts().tag();
        write(ChangeKind.VALVE_TEST, saved.id(), name, old == null ? null : old.lines(), saved.lines(), saved.entry());
        return saved;
    }

    /**
     * Records an inspection; the same submission a second time gives that of the first.
     *
     * @param correction null unless it takes the place of another, which stays as it is
     * @throws StaleRecord when another correction came first
     */
    @Transactional
    public Inspection record(InspectionDraft draft, @Nullable Correction correction, String by) {
        Optional<Inspection> again = inspections.findBySubmission(draft.submission());
        if (again.isPresent()) {
            return again.get();
        }
        Inspection old = correction == null
                ? null
                : inspections.findById(correction.oldId()).orElseThrow();
        if (old != null) {
            inspections.findByEntrySupersedesId(old.id()).ifPresent(later -> refuse(draft.receiverId(), later.entry()));
        }
        Inspection saved = inspections.saveAndFlush(new Inspection(draft, Entry.of(clock.instant(), by, correction)));
        String before = old == null ? null : old.lines();
        write(ChangeKind.INSPECTION, saved.id(), tag(draft.receiverId()), before, saved.lines(), saved.entry());
        return saved;
    }

    /**
     * Records damage, or that some is mended; the same submission a second time gives that of the first.
     *
     * @param cleared the damage that is mended; null when this is damage itself
     * @throws StaleRecord when somebody else cleared it first
     */
    @Transactional
    public VesselFinding record(FindingDraft draft, @Nullable VesselFinding cleared, String by) {
        Optional<VesselFinding> again = findings.findBySubmission(draft.submission());
        if (again.isPresent()) {
            return again.get();
        }
        Entry entry = Entry.of(clock.instant(), by, null);
        if (cleared != null) {
            findings.findByClearsId(cleared.id())
                    .ifPresent(later -> refuse(
                            draft.receiverId(),
                            new Entry(later.recordedAt(), later.recordedBy(), null, later.note(), false)));
        }
        VesselFinding saved = findings.saveAndFlush(
                new VesselFinding(draft, entry.recordedAt(), by, cleared == null ? null : cleared.id()));
        String before = cleared == null ? null : cleared.lines();
        write(ChangeKind.FINDING, saved.id(), tag(draft.receiverId()), before, saved.lines(), entry);
        return saved;
    }

    private String tag(long receiverId) {
        return receivers
                .findById(receiverId)
                .orElseThrow(() -> new NoSuchRecord("receiver " + receiverId))
                .facts()
                .tag();
    }

    private static void refuse(long receiverId, Entry later) {
        throw new StaleRecord(
                "record of receiver " + receiverId,
                new StaleRecord.Later(
                        "/receivers/" + receiverId,
                        later.recordedBy(),
                        later.recordedAt(),
                        String.valueOf(later.reason())));
    }

    private void write(ChangeKind kind, long id, String name, @Nullable String before, String after, Entry entry) {
        String reason = entry.reason() == null ? "recorded" : entry.reason();
        changes.save(new ChangeRecord(entry.recordedAt(), entry.recordedBy(), kind, id, name, before, after, reason));
    }
}
