package plantair.leaktest;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.Fetch;
import org.hibernate.annotations.FetchMode;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.NullUnmarked;
import org.jspecify.annotations.Nullable;
import plantair.testrecord.VolumeCopy;

/** A leak test as it was recorded. Written once; a correction, and a withdrawal, is another one that names this one. */
@Entity
@Immutable
@NullUnmarked
public class LeakTest {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private UUID submission;
    private long siteId;
    private @Nullable Long compressorId;

    @Enumerated(EnumType.STRING)
    private LeakTestKind kind;

    @Enumerated(EnumType.STRING)
    private LeakPlace place;

    private Instant performedAt;
    private String zone;
    private String tester;

    @Embedded
    private LeakState state;

    @ElementCollection(fetch = FetchType.EAGER)
    @Fetch(FetchMode.SELECT)
    @CollectionTable(name = "leak_cycle", joinColumns = @JoinColumn(name = "test_id"))
    @OrderColumn(name = "position")
    private List<CycleEntry> cycles = new ArrayList<>();

    @ElementCollection(fetch = FetchType.EAGER)
    @Fetch(FetchMode.SELECT)
    @CollectionTable(name = "leak_machine", joinColumns = @JoinColumn(name = "test_id"))
    @OrderColumn(name = "position")
    private List<MachineCopy> machines = new ArrayList<>();

    @ElementCollection(fetch = FetchType.EAGER)
    @Fetch(FetchMode.SELECT)
    @CollectionTable(name = "leak_reading", joinColumns = @JoinColumn(name = "test_id"))
    @OrderColumn(name = "position")
    private List<FallReading> readings = new ArrayList<>();

    @ElementCollection(fetch = FetchType.EAGER)
    @Fetch(FetchMode.SELECT)
    @CollectionTable(name = "leak_volume", joinColumns = @JoinColumn(name = "test_id"))
    @OrderColumn(name = "position")
    private List<VolumeCopy> volumes = new ArrayList<>();

    private String note;
    private String confirmed;

    @Embedded
    private Entry entry;

    protected LeakTest() {}

    LeakTest(LeakTestDraft draft, Entry entry) {
        submission = draft.submission();
        siteId = draft.siteId();
        compressorId = draft.compressorId();
        kind = draft.kind();
        place = draft.place();
        performedAt = draft.performedAt();
        zone = draft.zone();
        tester = draft.tester();
        state = draft.state();
        cycles.addAll(draft.cycles());
        machines.addAll(draft.machines());
        readings.addAll(draft.readings());
        volumes.addAll(draft.volumes());
        note = draft.note();
        confirmed = draft.confirmed();
        this.entry = entry;
    }

    public long id() {
        return id;
    }

    public long siteId() {
        return siteId;
    }

    public Entry entry() {
        return entry;
    }

    /** The test as it was typed, under its own submission. */
    public LeakTestDraft draft() {
        return new LeakTestDraft(
                submission,
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
                confirmed);
    }

    /** The day of the test where it was made. */
    public LocalDate on() {
        return performedAt.atZone(ZoneId.of(zone)).toLocalDate();
    }

    /** What stands in the history of changes. */
    String line() {
        return "leak test " + kind + " at " + performedAt + " by " + tester + (entry.withdrawn() ? ", withdrawn" : "");
    }
}
